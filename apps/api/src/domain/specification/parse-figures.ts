import { Decimal, ZERO } from '../units';
import {
  COCOA_PARTS,
  FAT_KINDS,
  POLYOL_KINDS,
  SINGLE_PARTS,
  statedGrams,
  SUGAR_KINDS,
  type CompositionPer100g,
} from './composition';
import { NUTRIENTS, ZERO_WHEN_LEFT_OUT, type Nutrient, type NutritionPer100g } from './nutrition';
import type { JsonReader } from './reader';
import { say } from '../words/say';

/** How far a stated composition may miss 100 g (97–103) before it is incomplete or wrong. */
export const CLOSURE_TOLERANCE_G = new Decimal(3);

const readGroup = <K extends string>(
  reader: JsonReader,
  kinds: readonly K[],
): Record<K, Decimal> => {
  const field = reader.isMissing ? null : reader.fields(kinds);
  const pairs = kinds.map((kind) => [kind, field?.(kind).figureOrNull(100) ?? ZERO] as const);
  return Object.fromEntries(pairs) as Record<K, Decimal>;
};

/** What is left out is none, which is safe because the whole must come to 100 g. */
export const readComposition = (reader: JsonReader): CompositionPer100g => {
  const field = reader.fields([
    ...SINGLE_PARTS, 'fat', 'sugars', 'polyols', 'cocoaSolids', 'glucoseSyrup', 'dairyAsh',
  ]); // prettier-ignore
  const single = Object.fromEntries(
    SINGLE_PARTS.map((part) => [part, field(part).figureOrNull(100) ?? ZERO] as const),
  ) as Record<(typeof SINGLE_PARTS)[number], Decimal>;
  const composition: CompositionPer100g = {
    ...single,
    fat: readGroup(field('fat'), FAT_KINDS),
    sugars: readGroup(field('sugars'), SUGAR_KINDS),
    polyols: readGroup(field('polyols'), POLYOL_KINDS),
    cocoaSolids: readGroup(field('cocoaSolids'), COCOA_PARTS),
    ...readSyrup(field('glucoseSyrup')),
    ...(field('dairyAsh').isMissing ? {} : { dairyAsh: field('dairyAsh').figure(100) }),
  };
  checkClosure(reader, composition);
  checkCocoa(field('cocoaSolids'), composition);
  return composition;
};

const readSyrup = (reader: JsonReader): Pick<CompositionPer100g, 'glucoseSyrup'> => {
  if (reader.isMissing) return {};
  const field = reader.fields(['solids', 'dextroseEquivalent']);
  const solids = field('solids').figure(100);
  return { glucoseSyrup: { solids, dextroseEquivalent: field('dextroseEquivalent').figure(100) } };
};

const checkClosure = (reader: JsonReader, composition: CompositionPer100g): void => {
  const total = statedGrams(composition);
  if (total.minus(100).abs().greaterThan(CLOSURE_TOLERANCE_G)) {
    reader.problem(say`must account for 100 g; it accounts for ${total.toString()} g`);
  }
};

const checkCocoa = (reader: JsonReader, { cocoaSolids, fat }: CompositionPer100g): void => {
  if (cocoaSolids.cocoaButter.greaterThan(fat.cocoaButter)) {
    reader.problem(say`cocoa butter must not exceed the cocoa butter among the fats`);
  }
  if (cocoaSolids.milkFat.greaterThan(cocoaSolids.milkSolids)) {
    reader.problem(say`milk fat must not exceed the milk solids that it is part of`);
  }
};

/** Largest figure of a nutrient in 100 g: grams, or the milligrams of a mineral. */
const mostOf = (nutrient: Nutrient): number =>
  nutrient.endsWith('Mg') || nutrient.endsWith('Mcg') ? 100_000 : 100;

export const readNutrition = (reader: JsonReader): NutritionPer100g => {
  const field = reader.fields(NUTRIENTS);
  const nutrition = Object.fromEntries(
    NUTRIENTS.map((nutrient) => {
      const stated = field(nutrient).figureOrNull(mostOf(nutrient));
      return [nutrient, stated ?? (ZERO_WHEN_LEFT_OUT.includes(nutrient) ? ZERO : null)] as const;
    }),
  ) as Record<Nutrient, Decimal | null>;
  checkPart(field, nutrition, 'saturates', 'fat');
  checkPart(field, nutrition, 'sugars', 'carbohydrate');
  checkPart(field, nutrition, 'polyols', 'carbohydrate');
  checkPart(field, nutrition, 'addedSugars', 'sugars');
  return nutrition;
};

const checkPart = (
  field: (name: Nutrient) => JsonReader,
  nutrition: NutritionPer100g,
  part: Nutrient,
  whole: Nutrient,
): void => {
  const [small, large] = [nutrition[part], nutrition[whole]];
  if (small && large && small.greaterThan(large)) {
    field(part).problem(say`must not exceed ${whole}, of which it is a part`);
  }
};
