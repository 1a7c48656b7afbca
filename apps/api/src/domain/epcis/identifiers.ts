import { isWorldwideGtin } from '../identification';

/** Where a workshop's things have their web names; the base has no slash at its end. */
export interface Naming {
  /** An https address of the workshop, or an own URN, to which the kind and the code are added. */
  readonly baseUri: string;
}

/** Percent-encodes all that RFC 3986 doesn't count as unreserved. */
const segment = (text: string): string =>
  encodeURIComponent(text).replace(
    /[!'()*]/g,
    (sign) => `%${sign.charCodeAt(0).toString(16).toUpperCase()}`,
  );

/**
 * A lot's class identifier: a GS1 Digital Link (key 01 with 10) when its item has a GTIN that means
 * the same everywhere, else a name under the workshop's own address.
 */
export const lotUri = (naming: Naming, code: string, gtin?: string): string =>
  gtin === undefined || !isWorldwideGtin(gtin.padStart(14, '0'))
    ? `${naming.baseUri}/lots/${segment(code)}`
    : `https://id.gs1.org/01/${gtin.padStart(14, '0')}/10/${segment(code)}`;

/** A place, a business partner, a document: always an own name. */
export const ownUri = (
  naming: Naming,
  kind: 'places' | 'suppliers' | 'customers' | 'deliveries' | 'dispatches' | 'batches' | 'steps',
  code: string,
): string => `${naming.baseUri}/${kind}/${segment(code)}`;
