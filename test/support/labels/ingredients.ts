import type { IngoingLot } from '@api/domain/declaration';
import {
  ALLERGENS,
  type Allergen,
  type AllergenStatement,
  type IngredientNode,
  type Specification,
  type SpecificationStatements,
} from '@api/domain/specification';
import { Decimal } from '@api/domain/units';

const NOTHING: SpecificationStatements = {
  sulphiteMgPerKg: null,
  glycyrrhizinicMgPerKg: null,
  chocolateKind: null,
  crossContactProteinMgPerKg: {},
  allergenProteinPercent: {},
};

/** An ingredient with an English name; whatever else the case needs comes in `more`. */
export const part = (
  name: string,
  percent: string | null = null,
  more: Partial<IngredientNode> = {},
): IngredientNode => ({
  names: { en: name },
  percent: percent === null ? null : new Decimal(percent),
  origins: [],
  flags: {},
  parts: [],
  ...more,
});

const originsOf = (node: IngredientNode): Allergen[] => [
  ...node.origins.map((origin) => origin.allergen),
  ...node.parts.flatMap(originsOf),
];

/** A specification whose allergen table agrees with its ingredients: all others are absent. */
export const specify = (
  ingredient: IngredientNode,
  statements: Partial<SpecificationStatements> = {},
  stated: AllergenStatement = {},
): Specification => {
  const inside = originsOf(ingredient);
  const table = ALLERGENS.map((allergen) => {
    const presence = inside.includes(allergen) ? ('contains' as const) : ('absent' as const);
    return [allergen, presence] as const;
  });
  return {
    ingredient,
    allergens: { ...Object.fromEntries(table), ...stated },
    composition: null,
    nutrition: null,
    statements: { ...NOTHING, ...statements },
  };
};

/** A lot of an ingredient in the bowl. `massG` differs from `ingoingG` when something was lost. */
export const lot = (
  specification: Specification,
  ingoingG: string | number,
  more: Partial<IngoingLot> = {},
): IngoingLot => {
  const name = specification.ingredient.names.en ?? '?';
  return {
    lotId: `lot of ${name}`,
    lotCode: `L-${name}`,
    itemId: name,
    itemName: name,
    ingoingG: new Decimal(ingoingG),
    massG: new Decimal(ingoingG),
    processingAid: false,
    via: 'draw',
    specification,
    ...more,
  };
};

export const milk = { allergen: 'milk' } as const;
export const soy = { allergen: 'soy' } as const;
export const hazelnut = { allergen: 'hazelnut' } as const;
export const wheat = { allergen: 'wheat' } as const;

export const lecithin = (percent: string): IngredientNode =>
  part('soya lecithins', percent, {
    usName: 'soy lecithin',
    additive: { functionalClass: 'emulsifier', eNumber: 'E322', carriedOver: false },
    origins: [soy],
  });

export const darkChocolate = (): IngredientNode =>
  part('dark chocolate', null, {
    flags: { definedInUnionLaw: true },
    parts: [
      part('cocoa mass', '60'),
      part('sugar', '38.5', { flags: { sugar: true } }),
      part('cocoa butter', '1'),
      lecithin('0.5'),
    ],
  });

/** The hazelnut ganache used as a worked case: 1020 g in the bowl, 1000 g when finished. */
export const hazelnutGanache = (): IngoingLot[] => [
  lot(specify(darkChocolate()), 400),
  lot(specify(part('cream', null, { origins: [milk] })), 300),
  lot(specify(part('hazelnuts', null, { origins: [hazelnut] })), 150),
  lot(
    specify(
      part('glucose syrup', null, { origins: [{ ...wheat, exclusion: 'wheat_glucose_syrup' }] }),
    ),
    80,
  ),
  lot(specify(part('butter', null, { origins: [milk] })), 60),
  lot(specify(part('rum', null, { flags: { volatile: true } })), 25),
  lot(specify(part('vanilla extract', null, { flags: { flavouringUse: true } })), 5),
];
