import { ok, refuse, type Result } from '../refusals/result';
import { quantityInWords, type StockUnit } from '../stock';
import { Decimal, sum } from '../units';
import { say } from '../words/say';
import type { MakingRefusal } from './refusals';

/** One pot or go of a making: the head, or a part of it. Quantities are in the item's unit. */
export interface PartOfMaking {
  readonly state: 'open' | 'finished' | 'abandoned';
  readonly planned: Decimal | null;
  readonly made: Decimal;
}

/** What it gives or is still to give: a finished one its lot, an abandoned one nothing. */
const expectedOf = ({ state, planned, made }: PartOfMaking): Decimal => {
  if (state === 'finished') return made;
  return state === 'abandoned' || planned === null ? new Decimal(0) : planned;
};

/** What was planned of the whole and no part gives any more; nought when it is all in hand. */
export const missingOf = (whole: Decimal, parts: readonly PartOfMaking[]): Decimal =>
  Decimal.max(0, whole.minus(sum(parts.map(expectedOf))));

export interface MakingToShare {
  readonly batchCode: string;
  readonly unit: StockUnit;
  /** What head and parts were to make together. */
  readonly whole: Decimal;
  /** What the head keeps of it so far. */
  readonly own: Decimal;
  /** The head among them. */
  readonly parts: readonly PartOfMaking[];
}

/**
 * Shares a quantity out to a new part: first what no part gives any more, as the share of an abandoned
 * one, then what the head keeps. The head stays with something to make, as it is made in it.
 * @returns what the head keeps
 */
export const shareOut = (making: MakingToShare, share: Decimal): Result<Decimal, MakingRefusal> => {
  const missing = missingOf(making.whole, making.parts);
  const own = making.own.minus(Decimal.max(0, share.minus(missing)));
  if (own.greaterThan(0)) return ok(own);
  const left = quantityInWords(missing.plus(making.own), making.unit);
  return refuse({
    code: 'part-too-large',
    detail: say`Of what was planned ${left} is left to share out, and batch ${making.batchCode} keeps some of it. Plan less than that for the part.`,
    facts: { batchCode: making.batchCode, left: missing.plus(making.own).toFixed() },
  });
};
