import type { components } from '../../api/schema';
import { addExact } from '../../shared/formats/exact';

type Lot = components['schemas']['LotView'];

export interface SendLine {
  readonly lotCode: string;
  readonly itemName: string;
  readonly unit: string;
  readonly onHand: string;
  readonly quantity: string;
}

/** A scanned lot is added with one; scanned again it counts one more, as at a till. */
export const withLot = (lines: readonly SendLine[], lot: Lot): readonly SendLine[] => {
  if (lines.some(({ lotCode }) => lotCode === lot.code)) {
    return lines.map((line) =>
      line.lotCode === lot.code
        ? { ...line, quantity: addExact(line.quantity === '' ? '0' : line.quantity, '1') }
        : line,
    );
  }
  const { code: lotCode, itemName, unit, onHandQuantity: onHand } = lot;
  return [...lines, { lotCode, itemName, unit, onHand, quantity: '1' }];
};
