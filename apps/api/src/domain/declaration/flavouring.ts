import type { Flavouring, Language, LocalText } from '../specification';
import { fill, wordsIn } from '../words';

/** Regulation (EC) No 1334/2008, Article 16(4): what "natural X" needs from X, per cent. */
const NATURAL_FROM_SOURCE_PERCENT = 95;

/**
 * The name a flavouring may bear (Article 16 of Regulation (EC) No 1334/2008, from memory). The
 * word "natural" is given by the facts and never taken from the supplier's wording; null when a
 * name in that language is missing.
 */
export const flavouringName = (
  flavouring: Flavouring,
  stated: LocalText,
  language: Language,
): string | null => {
  const words = wordsIn(language).label;
  if (!flavouring.natural) return stated[language] ?? null;
  const source = flavouring.source?.[language];
  if (flavouring.source && source === undefined) return null;
  if (source === undefined || !flavouring.fromSourcePercent) return words.naturalFlavouring;
  if (flavouring.fromSourcePercent.greaterThanOrEqualTo(NATURAL_FROM_SOURCE_PERCENT)) {
    return fill(words.naturalOf, { x: source });
  }
  return flavouring.recognisable
    ? fill(words.naturalOfWithOthers, { x: source })
    : words.naturalFlavouring;
};

/** A name that says "natural" of a flavouring that isn't. */
export const claimsNatural = (stated: LocalText): boolean =>
  Object.values(stated).some((name) => /natur|natuurlijk/iu.test(name));
