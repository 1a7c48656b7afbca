import type { NutritionPanel, NutritionRow } from '../label/content';
import type { Language, NutritionPer100g } from '../specification';
import { ZERO, type Decimal } from '../units';
import { figureIn, fill, NBSP, wordsIn } from '../words';
import { energyOf, type Energy } from './energy';
import { euAmount, euEnergy, percentOfIntake, type EuRow } from './eu-rounding';

export interface EuPanelSettings {
  readonly language: Language;
  readonly portionG: Decimal | null;
  readonly referenceIntakes: boolean;
  readonly fibre: boolean;
  /** Sodium is only what the ingredients hold by nature. */
  readonly naturalSaltOnly: boolean;
}

/** Rows of Annex XV in their order; fibre and polyols when they are shown. */
const ROWS: readonly { readonly row: EuRow; readonly indented: boolean }[] = [
  { row: 'fat', indented: false },
  { row: 'saturates', indented: true },
  { row: 'carbohydrate', indented: false },
  { row: 'sugars', indented: true },
  { row: 'polyols', indented: true },
  { row: 'fibre', indented: false },
  { row: 'protein', indented: false },
  { row: 'salt', indented: false },
];

/** The panel of Article 30 to 35, or null when a figure that it needs isn't known. */
export const euPanel = (
  nutrition: NutritionPer100g,
  settings: EuPanelSettings,
): NutritionPanel | null => {
  const energy = energyOf(nutrition);
  const shown = ROWS.filter(({ row }) => isShown(row, nutrition, settings));
  if (!energy || shown.some(({ row }) => nutrition[row] === null)) return null;
  const words = wordsIn(settings.language).nutrients;
  const { portionG, referenceIntakes } = settings;
  return {
    language: settings.language,
    title: words.title,
    amountHeading: words.per100g,
    portionHeading: portionG
      ? fill(words.perPortion, { g: figureIn(portionG.toString(), settings.language) })
      : null,
    percentHeading: referenceIntakes ? words.percentOfReference : null,
    lead: [],
    rows: [
      energyRow(energy, settings),
      ...shown.map(({ row, indented }) =>
        nutrientRow(row, indented, nutrition[row] ?? ZERO, settings),
      ),
    ],
    notes: [
      ...(referenceIntakes ? [`* ${words.referenceIntake}`] : []),
      ...(settings.naturalSaltOnly ? [words.naturalSalt] : []),
    ],
  };
};

const isShown = (row: EuRow, nutrition: NutritionPer100g, { fibre }: EuPanelSettings): boolean => {
  if (row === 'polyols') return nutrition.polyols?.greaterThan(0) ?? true;
  return row !== 'fibre' || fibre;
};

const share = (per100g: Decimal, portionG: Decimal): Decimal =>
  per100g.times(portionG).dividedBy(100);

const energyRow = (energy: Energy, settings: EuPanelSettings): NutritionRow => {
  const { portionG, language } = settings;
  const text = (kJ: Decimal, kcal: Decimal): string =>
    `${euEnergy(kJ)}${NBSP}kJ / ${euEnergy(kcal)}${NBSP}kcal`;
  const counted = portionG ? share(energy.kJ, portionG) : energy.kJ;
  return {
    label: wordsIn(language).nutrients.energy,
    amount: text(energy.kJ, energy.kcal),
    portion: portionG ? text(counted, share(energy.kcal, portionG)) : null,
    percent: settings.referenceIntakes ? `${percentOfIntake('energyKJ', counted) ?? ''}%` : null,
    indented: false,
  };
};

const nutrientRow = (
  row: EuRow,
  indented: boolean,
  per100g: Decimal,
  { language, portionG, referenceIntakes }: EuPanelSettings,
): NutritionRow => {
  const text = (grams: Decimal): string => `${figureIn(euAmount(row, grams), language)}${NBSP}g`;
  const counted = portionG ? share(per100g, portionG) : per100g;
  const percent = referenceIntakes ? percentOfIntake(row, counted) : null;
  return {
    label: wordsIn(language).nutrients[row],
    amount: text(per100g),
    portion: portionG ? text(counted) : null,
    percent: percent === null ? null : `${percent}%`,
    indented,
  };
};
