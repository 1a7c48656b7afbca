// The worked example that several checks share: ten times a dark ganache of 313 g, piped into
// moulds of 24, boxed by twelve. Prices and rates are invented; the arithmetic is the check.
import {
  designedCost,
  recipeFacts,
  type CostBasis,
  type RecipeFacts,
  type UnitPrice,
} from '@api/domain/costing';
import type { ScalableLine, ScalableRecipe, StepLoss } from '@api/domain/scaling';
import { Decimal } from '@api/domain/units';

export const DAY = '2026-11-02';

const line = (
  itemId: string,
  quantity: string,
  role: string,
  unit: 'g' | 'pc' = 'g',
): ScalableLine => ({
  itemId,
  unit,
  quantity: new Decimal(quantity),
  role,
});

const byWeight = (lines: ScalableLine[], yieldMassG: string): ScalableRecipe => ({
  lines,
  losses: [],
  yieldMassG: new Decimal(yieldMassG),
  yieldPieces: null,
  cavitiesPerTray: null,
});

const byPiece = (
  lines: ScalableLine[],
  pieces: number,
  losses: StepLoss[] = [],
): ScalableRecipe => ({
  lines,
  losses,
  yieldMassG: null,
  yieldPieces: pieces,
  cavitiesPerTray: null,
});

const facts = (
  item: string,
  recipe: ScalableRecipe,
  minutes: string,
  makesPieces: boolean,
): RecipeFacts => {
  const read = recipeFacts(
    item,
    recipe,
    [{ role: 'maker', minutes: new Decimal(minutes) }],
    makesPieces,
  );
  if (!read.ok) throw new Error(read.refusal.detail);
  return read.value;
};

export const RECIPES = new Map<string, RecipeFacts>([
  [
    'ganache',
    facts(
      'ganache',
      byWeight(
        [
          line('cream', '1000', 'base'),
          line('dark', '1500', 'base'),
          line('syrup', '200', 'base'),
          line('invert', '150', 'base'),
          line('sorbitol', '80', 'base'),
          line('butter', '200', 'base'),
        ],
        '3130',
      ),
      '0',
      false,
    ),
  ],
  [
    'piece',
    facts(
      'piece',
      byPiece([line('ganache', '3130', 'filling'), line('dark', '2482.272', 'shell')], 606),
      '450',
      true,
    ),
  ],
  [
    'box',
    facts(
      'box',
      byPiece([line('piece', '12', 'slot', 'pc'), line('carton', '1', 'packaging', 'pc')], 1),
      '0',
      false,
    ),
  ],
]);

const perKg = (amount: string): UnitPrice => ({
  amount: new Decimal(amount),
  per: 'kg',
});

export const BASIS: CostBasis = {
  day: DAY,
  recipes: RECIPES,
  prices: new Map<string, UnitPrice>([
    ['cream', perKg('4.20')],
    ['dark', perKg('9.80')],
    ['syrup', perKg('2.10')],
    ['invert', perKg('3.40')],
    ['sorbitol', perKg('5.20')],
    ['butter', perKg('8.60')],
    ['carton', { amount: new Decimal('1.23'), per: 'pc' }],
  ]),
  rates: [{ role: 'maker', fromDay: '2026-01-01', ratePerHour: new Decimal('22.00') }],
  overhead: { kind: 'per_hour', ratePerHour: new Decimal(0) },
};

/** Unwraps a result that the example knows to be good. */
export const good = <T>(
  result: { ok: true; value: T } | { ok: false; refusal: { detail: string } },
): T => {
  if (!result.ok) throw new Error(result.refusal.detail);
  return result.value;
};

export const costOf = (item: string, basis: CostBasis = BASIS) => good(designedCost(item, basis));
