import type { Exposure } from '../../domain/complaint-causes';
import type { Subgraph } from '../tracing';
import type { ComparableLot, MouldOfBatch } from './common-causes.queries';

type Kind = 'lot' | 'mould' | 'tank' | 'person' | 'place';

/** A cause as one text, so that sets of causes are sets of texts. */
export const causeKey = (kind: Kind, name: string): string => `${kind}:${name}`;

export const causeOf = (key: string): { kind: Kind; name: string } => {
  const colon = key.indexOf(':');
  return { kind: key.slice(0, colon) as Kind, name: key.slice(colon + 1) };
};

/**
 * Everything behind each lot of a graph: lots, and the moulds, tanks, people and places of their
 * making. Built once in the order of making, so shared ancestors are shared work.
 */
export const causesBehind = (
  { rows, lots, graph }: Subgraph,
  names: {
    readonly moulds: readonly MouldOfBatch[];
    readonly people: ReadonlyMap<string, string>;
    readonly tanks: ReadonlyMap<string, string>;
    readonly places: ReadonlyMap<string, string>;
  },
): ReadonlyMap<string, ReadonlySet<string>> => {
  const ownOf = new Map(lots.map((row) => [row[1], ownCauses(row[11], names.places)]));
  const batchCauses = new Map(
    (rows.batches ?? []).map((row) => {
      const causes = new Set<string>();
      const add = (kind: Kind, name: string | undefined): void => {
        if (name !== undefined) causes.add(causeKey(kind, name));
      };
      add('person', names.people.get(row[6]));
      add('tank', names.tanks.get(row[7] ?? ''));
      add('place', names.places.get(row[8] ?? ''));
      for (const use of names.moulds) if (use.batchId === row[0]) add('mould', use.tag);
      return [row[1], causes] as const;
    }),
  );
  const behind = new Map<string, Set<string>>(ownOf);
  for (const batch of graph.ok ? graph.value.batches : []) {
    const causes = new Set(batchCauses.get(batch.id));
    for (const drawn of batch.lots) {
      causes.add(causeKey('lot', drawn));
      for (const cause of behind.get(drawn) ?? []) causes.add(cause);
    }
    for (const made of batch.outputs) {
      const own = behind.get(made);
      if (own) for (const cause of causes) own.add(cause);
    }
  }
  return behind;
};

const ownCauses = (placeId: string | null, places: ReadonlyMap<string, string>): Set<string> => {
  const place = places.get(placeId ?? '');
  return new Set(place === undefined ? [] : [causeKey('place', place)]);
};

/** The units of each comparable lot that went out, with all that was, or may have been, in them. */
export const exposuresOf = (
  comparable: readonly ComparableLot[],
  complaintsOf: ReadonlyMap<string, number>,
  behind: ReadonlyMap<string, ReadonlySet<string>>,
): Exposure[] =>
  comparable.map((lot) => {
    const complaints = complaintsOf.get(lot.code) ?? 0;
    return {
      unit: lot.code,
      complaints,
      others: Math.max(0, Math.round(Number(lot.sent)) - complaints),
      causes: new Set([causeKey('lot', lot.code), ...(behind.get(lot.code) ?? [])]),
    };
  });
