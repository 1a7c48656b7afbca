import { Decimal } from '../../domain/units';
import type { PackedDraw } from './split.queries';

/** Part of a draw that falls to one run of boxes. */
export interface Part {
  readonly draw: PackedDraw;
  readonly quantity: Decimal;
}

/** Deals what was drawn of one item to the runs, lot after lot in the order of the draws. */
export const dealOut = (draws: readonly PackedDraw[], shares: readonly Decimal[]): Part[][] => {
  const left = draws.map((draw) => ({ draw, quantity: draw.quantity }));
  return shares.map((share) => {
    const parts: Part[] = [];
    let open = share;
    for (const [index, { draw, quantity }] of left.entries()) {
      if (open.isZero()) break;
      const taken = Decimal.min(open, quantity);
      if (taken.isZero()) continue;
      parts.push({ draw, quantity: taken });
      left[index] = { draw, quantity: quantity.minus(taken) };
      open = open.minus(taken);
    }
    return parts;
  });
};
