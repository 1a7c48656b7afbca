import fc from 'fast-check';
import type { AuditedBatch } from './rationals';

const grams = (mg: number): string => (mg / 1000).toFixed(3);

const made = (
  id: string,
  lot: string,
  draws: readonly (readonly [lot: string, mg: number])[],
  lossMg = 0,
): AuditedBatch => {
  const total = draws.reduce((sum, [, mg]) => sum + mg, 0);
  return {
    id,
    draws: draws.map(([drawn, mg]) => ({ lot: drawn, grams: grams(mg) })),
    losses: lossMg === 0 ? [] : [{ grams: grams(lossMg) }],
    outputs: [{ lot, grams: grams(total - lossMg) }],
  };
};

/**
 * A tank that is topped up `charges` times and never recorded clean: each charge takes all that is
 * left of the tank's lot, and its lots are drawn from in between. Weights vary with the seed.
 */
export const tankOf = (charges: number): fc.Arbitrary<AuditedBatch[]> =>
  fc
    .array(
      fc.record({
        heel: fc.integer({ min: 0, max: 9_000_000 }),
        top: fc.integer({ min: 1, max: 3_000_000 }),
      }),
      {
        minLength: charges,
        maxLength: charges,
      },
    )
    .map((plan) =>
      plan.map(({ heel, top }, number) =>
        made(
          `charge ${String(number)}`,
          `T${String(number)}`,
          number === 0
            ? [['R0', heel + 1]]
            : [
                [`T${String(number - 1)}`, heel],
                [`R${String(number)}`, top],
              ],
        ),
      ),
    );

/** Each cook takes trimmings of the one before, and every third is lost in part: rework for months. */
export const reworkOf = (cooks: number): fc.Arbitrary<AuditedBatch[]> =>
  fc
    .array(
      fc.record({
        trimmings: fc.integer({ min: 1, max: 500_000 }),
        fresh: fc.integer({ min: 1, max: 2_000_000 }),
        lossPer: fc.nat(20),
      }),
      { minLength: cooks, maxLength: cooks },
    )
    .map((plan) =>
      plan.map(({ trimmings, fresh, lossPer }, number) => {
        const draws: [string, number][] = [[`R${String(number % 7)}`, fresh]];
        if (number > 0) draws.push([`L${String(number - 1)}`, trimmings]);
        const total = draws.reduce((sum, [, mg]) => sum + mg, 0);
        return made(
          `cook ${String(number)}`,
          `L${String(number)}`,
          draws,
          number % 3 === 0 ? Math.floor((total * lossPer) / 100) : 0,
        );
      }),
    );

/**
 * Diamond upon diamond: each level has two lots, and each is made of both lots of the level before.
 * The paths double with every level; the lots only go up by two.
 */
export const diamondsOf = (levels: number): fc.Arbitrary<AuditedBatch[]> =>
  fc
    .array(fc.tuple(...Array.from({ length: 4 }, () => fc.integer({ min: 1, max: 900_000 }))), {
      minLength: levels,
      maxLength: levels,
    })
    .map((plan) =>
      plan.flatMap((weights, level) => {
        const before = (side: number): string =>
          level === 0 ? `R${String(side)}` : `D${String(level - 1)}-${String(side)}`;
        return [0, 1].map((side) =>
          made(`mix ${String(level)}-${String(side)}`, `D${String(level)}-${String(side)}`, [
            [before(0), weights[2 * side] ?? 1],
            [before(1), weights[2 * side + 1] ?? 1],
          ]),
        );
      }),
    );
