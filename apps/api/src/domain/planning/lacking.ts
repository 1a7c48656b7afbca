import { Decimal, ZERO, sum } from '../units';

/** An open batch: what its plan takes of each item, and what was drawn into it. */
export interface BatchToFill {
  readonly batch: string;
  readonly lines: readonly { readonly item: string; readonly quantity: Decimal }[];
  readonly drawn: ReadonlyMap<string, Decimal>;
}

export interface Lacking {
  readonly batch: string;
  readonly item: string;
  readonly quantity: Decimal;
}

/**
 * What the open batches of one making lack still, the head first and then its parts. What is kept
 * for the head is there for its parts too, so it fills one after the other and each gram of it once:
 * the head has only the need that its parts left it. An item that a batch takes twice, as shell and
 * as cap, is one need.
 * @param batches the open ones, as they were opened
 * @param kept of each item, reserved for the making and not drawn yet
 */
export const lackingOf = (
  batches: readonly BatchToFill[],
  kept: ReadonlyMap<string, Decimal>,
): Lacking[] => {
  const left = new Map(kept);
  return batches.flatMap(({ batch, lines, drawn }) =>
    [...new Set(lines.map(({ item }) => item))].flatMap((item): Lacking[] => {
      const asked = sum(lines.filter((line) => line.item === item).map((line) => line.quantity));
      const open = Decimal.max(ZERO, asked.minus(drawn.get(item) ?? ZERO));
      const reserved = Decimal.min(open, left.get(item) ?? ZERO);
      left.set(item, (left.get(item) ?? ZERO).minus(reserved));
      const quantity = open.minus(reserved);
      return quantity.isZero() ? [] : [{ batch, item, quantity }];
    }),
  );
};
