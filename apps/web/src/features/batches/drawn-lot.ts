import type { components } from '../../api/schema';
import { useRead } from '../../api/use-api';
import { useSettled } from '../../shared/kit/use-settled';
import type { Batch } from './use-batch-booking';

export type Line = components['schemas']['BatchLineView'];
type Lot = components['schemas']['LotView'];

export interface DrawnLot {
  /** The recipe's line that the lot is for: the one that was opened, or the one of its item. */
  readonly line: Line | undefined;
  /** The lot, when it is another item than the line's, or than any line's. */
  readonly foreign: Lot | undefined;
  /** The lot could not be looked at, so nobody knows yet what it is. */
  readonly error: unknown;
  readonly looking: boolean;
}

const proposes = (line: Line, code: string): boolean =>
  line.proposedLots.some(({ lotCode }) => lotCode === code);

/** What a lot at the bench is to the recipe; proposed lots are known without asking. */
export const useDrawnLot = (batch: Batch, opened: Line | undefined, typed: string): DrawnLot => {
  const code = typed.trim();
  const rested = useSettled(code);
  const mayBe = opened === undefined ? batch.lines : [opened];
  const proposed = mayBe.find((line) => proposes(line, code));
  const ask = proposed === undefined && rested === code && code !== '';
  const found = useRead(
    '/api/lots/{code}',
    { params: { path: { code: rested } } },
    { enabled: ask },
  );
  if (proposed !== undefined || code === '') {
    return { line: proposed ?? opened, foreign: undefined, error: undefined, looking: false };
  }
  const lot = ask ? found.data : undefined;
  if (lot === undefined) {
    const error = ask ? found.error : undefined;
    return {
      line: opened,
      foreign: undefined,
      error,
      looking: error === undefined || error === null,
    };
  }
  const same = mayBe.find(({ itemId }) => itemId === lot.itemId);
  const foreign = same === undefined ? lot : undefined;
  return { line: same ?? opened, foreign, error: undefined, looking: false };
};
