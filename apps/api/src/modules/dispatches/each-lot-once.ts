import { RefusalError } from '../../platform/problems';
import { say } from '../../domain/words/say';

/** @throws RefusalError when a lot stands on two lines: each would see the other's goods as its own */
export const refuseTwice = (codes: readonly string[]): void => {
  const twice = codes.find((code, index) => codes.indexOf(code) !== index);
  if (twice === undefined) return;
  throw new RefusalError({
    code: 'not-valid',
    detail: say`Lot ${twice} is on two lines. Put it on one line with the whole quantity.`,
    facts: { lotCode: twice },
  });
};
