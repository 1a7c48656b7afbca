import type { Naming } from './identifiers';

/** The published context of EPCIS 2.0, and this workshop's own terms under its own address. */
const epcisContext = (naming: Naming): readonly unknown[] => [
  'https://ref.gs1.org/standards/epcis/2.0.0/epcis-context.jsonld',
  { workshop: `${naming.baseUri}/terms/` },
];

/**
 * The document around a list of events, in two parts, so that a long list can be written as it is
 * read: `head`, the events with commas between them, `tail`.
 */
export const epcisDocument = (
  naming: Naming,
  createdAt: string,
): { readonly head: string; readonly tail: string } => {
  const shell = JSON.stringify({
    '@context': epcisContext(naming),
    type: 'EPCISDocument',
    schemaVersion: '2.0',
    creationDate: createdAt,
    epcisBody: { eventList: [] },
  });
  const cut = shell.length - ']}}'.length;
  return { head: shell.slice(0, cut), tail: shell.slice(cut) };
};
