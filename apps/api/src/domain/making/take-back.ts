import { ok, refuse, type Result } from '../refusals/result';
import { say } from '../words/say';
import type { MakingRefusal } from './refusals';

/** A lot that a batch made, as it stands when somebody says that it never came out so. */
export interface OutputToTakeBack {
  readonly code: string;
  /** It was drawn, sent, counted or thrown away, and that stands. */
  readonly used: boolean;
  readonly takenBack: boolean;
}

/**
 * A lot is taken back only while nothing rests on it: what was made of it, sent or counted stays true.
 * Something takes its place, so that the weight and the cost of the batch stay somewhere.
 */
export const checkTakeBack = <L extends OutputToTakeBack>(
  lots: readonly L[],
  replacements: number,
): Result<readonly L[], MakingRefusal> => {
  if (lots.length > 0 !== replacements > 0) {
    return refuse({
      code: 'output-not-replaced',
      detail: say`Name the lots that are wrong and book what came out instead of them; both, in one correction.`,
    });
  }
  for (const { code, used, takenBack } of lots) {
    if (takenBack) {
      const detail = say`Lot ${code} was taken back already. Nothing more to put right.`;
      return refuse({ code: 'already-reversed', detail, facts: { lotCode: code } });
    }
    if (used) {
      return refuse({
        code: 'output-used',
        detail: say`Some of lot ${code} was used, sent or counted already, so it did come out. Reverse that first, or count the lot as it is now.`,
        facts: { lotCode: code },
      });
    }
  }
  return ok(lots);
};
