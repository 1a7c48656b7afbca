import { MONEY_PLACES, QUANTITY_PLACES, ZERO, roundTo, sum, type Decimal } from '../units';

/** What the books say of a lot when it is counted. */
export interface BookedLot {
  readonly lot: string;
  readonly onHandQuantity: Decimal;
  readonly onHandMassG: Decimal;
  readonly onHandCost: Decimal;
  /** Of the whole lot as it came in or was made; the measure when nothing is on hand any more. */
  readonly madeQuantity: Decimal;
  readonly madeMassG: Decimal;
  readonly madeCost: Decimal;
}

export interface CountedLot {
  readonly lot: string;
  readonly countedQuantity: Decimal;
}

/** The movement that makes the books agree with the count; all three figures have one sign. */
export interface CountDifference {
  readonly lot: string;
  readonly quantity: Decimal;
  readonly massG: Decimal;
  readonly cost: Decimal;
}

/**
 * Differences between count and books, lots that agree left out. Weight and money go in proportion
 * (milligrams and four places), and a lot that is counted as empty gives up all the rest of both,
 * so that no milligram and no cent of it stays behind.
 */
export const countDifferences = (
  booked: ReadonlyMap<string, BookedLot>,
  counted: readonly CountedLot[],
): CountDifference[] =>
  counted.flatMap(({ lot, countedQuantity }) => {
    const books = booked.get(lot);
    if (!books) return [];
    const quantity = countedQuantity.minus(books.onHandQuantity);
    if (quantity.isZero()) return [];
    if (countedQuantity.isZero()) {
      const [massG, cost] = [books.onHandMassG.negated(), books.onHandCost.negated()];
      return [{ lot, quantity, massG, cost }];
    }
    const share = (part: Decimal, places: number): Decimal =>
      roundTo(quantity.times(part).dividedBy(measure), places);
    const some = books.onHandQuantity.greaterThan(0);
    const measure = some ? books.onHandQuantity : books.madeQuantity;
    if (measure.isZero()) return [{ lot, quantity, massG: ZERO, cost: ZERO }];
    return [
      {
        lot,
        quantity,
        massG: share(some ? books.onHandMassG : books.madeMassG, QUANTITY_PLACES),
        cost: share(some ? books.onHandCost : books.madeCost, MONEY_PLACES),
      },
    ];
  });

/** What the count cost, or found, in money. */
export const countValue = (differences: readonly CountDifference[]): Decimal =>
  sum(differences.map(({ cost }) => cost));
