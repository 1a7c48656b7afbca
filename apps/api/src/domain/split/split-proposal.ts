import type { Refused, Result } from '../refusals/result';
import { ok, refuse } from '../refusals/result';
import { say } from '../words/say';

export type SplitRefusal = Refused & { readonly code: 'pieces-do-not-fill-boxes' };

/** The pieces of one kind that a packing used, lot after lot in the order in which they were used. */
export interface SlotSupply {
  readonly item: string;
  readonly piecesPerBox: number;
  readonly lots: readonly { readonly lot: string; readonly pieces: number }[];
}

/** Boxes that hold pieces of the same lots throughout: one box lot each keeps a recall small. */
export interface BoxRun {
  readonly firstBox: number;
  readonly lastBox: number;
  readonly boxes: number;
  readonly lots: readonly string[];
}

/** Lots of one kind in box number `box`, counted from nought. */
const lotsInBox = (supply: SlotSupply, box: number): string[] => {
  const from = box * supply.piecesPerBox;
  const to = from + supply.piecesPerBox;
  let start = 0;
  const lots: string[] = [];
  for (const { lot, pieces } of supply.lots) {
    if (start < to && start + pieces > from && pieces > 0) lots.push(lot);
    start += pieces;
  }
  return lots;
};

/** Boxes at which the lots of a kind change, as box numbers counted from nought. */
const changes = (supply: SlotSupply): number[] => {
  let used = 0;
  return supply.lots.flatMap(({ pieces }) => {
    used += pieces;
    return [Math.floor(used / supply.piecesPerBox), Math.ceil(used / supply.piecesPerBox)];
  });
};

/**
 * Splits a packing into runs of boxes at each change of a piece lot. A box that was filled from two
 * lots of one kind makes a run of its own, so that neither neighbour carries a lot that isn't in it.
 */
export const splitProposal = (
  boxes: number,
  supplies: readonly SlotSupply[],
): Result<BoxRun[], SplitRefusal> => {
  for (const supply of supplies) {
    const pieces = supply.lots.reduce((total, lot) => total + lot.pieces, 0);
    if (pieces !== boxes * supply.piecesPerBox) {
      return refuse({
        code: 'pieces-do-not-fill-boxes',
        detail: say`${boxes} boxes take ${boxes * supply.piecesPerBox} of ${supply.item}, but ${pieces} were drawn. Correct the draws or the number of boxes.`,
        facts: { item: supply.item, boxes, pieces },
      });
    }
  }
  const starts = [...new Set([0, ...supplies.flatMap(changes)])]
    .filter((start) => start < boxes)
    .sort((a, b) => a - b);
  return ok(
    starts.map((start, index) => {
      const next = starts[index + 1] ?? boxes;
      return {
        firstBox: start + 1,
        lastBox: next,
        boxes: next - start,
        lots: [...new Set(supplies.flatMap((supply) => lotsInBox(supply, start)))],
      };
    }),
  );
};
