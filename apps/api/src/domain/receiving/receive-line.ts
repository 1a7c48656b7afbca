import type { Temporal } from 'temporal-polyfill';
import { ok, refuse, type Result } from '../refusals/result';
import { checkQuantity, type StockRefusal, type StockShare, type StockUnit } from '../stock';
import { Decimal, ZERO } from '../units';
import type { ReceivingRefusal } from './refusals';
import { named, say } from '../words/say';

/** One line of a delivery as it was read off the carton. */
export interface GoodsLine {
  readonly itemName: string;
  readonly itemKind: string;
  readonly unit: StockUnit;
  readonly perishable: boolean;
  /** Warmest temperature at which this item is taken in, °C; null when none was set. */
  readonly warmestTempC: Decimal | null;
  /** Grams of one piece, for food that is kept by the piece; null when not known. */
  readonly pieceMassG: Decimal | null;
  readonly supplierLotCode: string;
  readonly quantity: Decimal;
  readonly price: Decimal;
  readonly tempC: Decimal | null;
  readonly bestBefore: Temporal.PlainDate | null;
  readonly useBy: Temporal.PlainDate | null;
  /** Null when it was accepted. */
  readonly refusalReason: string | null;
  readonly specification: { readonly allergensUnknown: readonly string[] } | null;
}

export interface HoldToPlace {
  readonly kind: 'no_specification' | 'unknown_allergen' | 'temperature';
  readonly reason: string;
}

export interface ReceivedLot {
  /** Nothing goes on hand when the line was refused. */
  readonly made: StockShare;
  readonly refused: boolean;
  readonly holds: readonly HoldToPlace[];
}

const NOTHING: StockShare = { quantity: ZERO, massG: ZERO, cost: ZERO };

/** Packaging has no grams of food, so that it never enters a balance of food. */
const massOf = (line: GoodsLine): Decimal => {
  if (line.itemKind === 'packaging') return ZERO;
  if (line.unit === 'g') return line.quantity;
  return line.quantity.times(line.pieceMassG ?? ZERO);
};

const holdsOf = (line: GoodsLine): HoldToPlace[] => {
  const holds: HoldToPlace[] = [];
  if (line.itemKind === 'ingredient' && line.specification === null) {
    holds.push({
      kind: 'no_specification',
      reason: say`${line.itemName} has no approved specification of this supplier.`,
    });
  }
  const unknown = line.specification?.allergensUnknown ?? [];
  if (unknown.length > 0) {
    holds.push({
      kind: 'unknown_allergen',
      reason: say`The supplier doesn't say whether it contains: ${unknown.map(named).join(', ')}.`,
    });
  }
  if (line.tempC !== null && line.warmestTempC !== null && line.tempC.gt(line.warmestTempC)) {
    holds.push({
      kind: 'temperature',
      reason: say`Arrived at ${line.tempC.toFixed()} °C; the limit is ${line.warmestTempC.toFixed()} °C.`,
    });
  }
  return holds;
};

const refusalOf = (line: GoodsLine, today: Temporal.PlainDate): ReceivingRefusal | undefined => {
  const facts = { item: line.itemName, supplierLotCode: line.supplierLotCode };
  if (line.useBy !== null && line.useBy.toString() < today.toString()) {
    return {
      code: 'goods-past-use-by',
      detail: say`${line.itemName}, lot ${line.supplierLotCode}, is past its use-by date ${line.useBy.toString()}. Refuse the line, and tell the supplier.`,
      facts: { ...facts, useBy: line.useBy.toString() },
    };
  }
  if (line.perishable && line.useBy === null && line.bestBefore === null) {
    return {
      code: 'goods-dates-missing',
      detail: say`${line.itemName} is perishable: give the best-before or use-by date on the carton.`,
      facts,
    };
  }
  if (line.perishable && line.warmestTempC !== null && line.tempC === null) {
    return {
      code: 'temperature-needed',
      detail: say`${line.itemName} travels cold: measure its temperature on arrival and enter it.`,
      facts,
    };
  }
  return undefined;
};

/**
 * What a delivery line puts on hand and what is held by itself. A refused line is recorded, with
 * nothing on hand.
 */
export const receiveLine = (
  line: GoodsLine,
  today: Temporal.PlainDate,
): Result<ReceivedLot, ReceivingRefusal | StockRefusal> => {
  const quantity = checkQuantity(line.supplierLotCode, line.unit, line.quantity);
  if (!quantity.ok) return quantity;
  if (line.refusalReason !== null) return ok({ made: NOTHING, refused: true, holds: [] });
  const refusal = refusalOf(line, today);
  if (refusal !== undefined) return refuse(refusal);
  return ok({
    made: { quantity: line.quantity, massG: massOf(line), cost: line.price },
    refused: false,
    holds: holdsOf(line),
  });
};
