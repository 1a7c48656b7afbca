import type { BatchSheetView } from '../../documents';
import { stepChecks } from '../../domain/making';
import { Decimal } from '../../domain/units';
import type { BatchView } from '../batches';

interface Step {
  readonly title: string;
  readonly text: string;
}

const readSteps = (steps: unknown): Step[] =>
  Array.isArray(steps)
    ? steps.map((step: { title?: unknown; text?: unknown }) => ({
        title: typeof step.title === 'string' ? step.title : '',
        text: typeof step.text === 'string' ? step.text : '',
      }))
    : [];

/** Measures as people read them, with their unit. */
const MEASURES: Readonly<Record<string, readonly [string, string]>> = {
  temp_c: ['°C', '°C'],
  humidity_percent: ['RH', '%'],
  water_activity: ['aw', ''],
  ph: ['pH', ''],
  brix: ['°Brix', '°Brix'],
  mass_g: ['g', 'g'],
};

export interface SheetFacts {
  readonly steps: unknown;
  readonly placeName: string | null;
  readonly useByLots: ReadonlySet<string>;
  readonly allergenNames: readonly string[];
  readonly allergensUnknown: boolean;
}

/** What is left to weigh of each line, spread over the lots that were drawn or are proposed. */
export const batchSheetView = (batch: BatchView, facts: SheetFacts): BatchSheetView => {
  const checks = stepChecks(facts.steps);
  const unit = (text: string): 'g' | 'pc' => (text === 'pc' ? 'pc' : 'g');
  return {
    code: batch.code,
    itemName: batch.itemName,
    recipeVersion: batch.recipeNumber,
    openedAt: new Date(batch.openedAt),
    operatorName: batch.operatorName,
    placeName: facts.placeName,
    planned:
      batch.plannedQuantity === null
        ? null
        : { quantity: batch.plannedQuantity, unit: unit(batch.unit) },
    part: batch.part,
    lines: batch.lines.flatMap((line) => sheetLines(line, facts)),
    steps: readSteps(facts.steps).map((step) => ({
      ...step,
      checks: checks
        .filter((check) => check.step === step.title)
        .map((check) => {
          const [measure, shown] = MEASURES[check.measure] ?? [check.measure, ''];
          return {
            measure,
            low: check.low?.toFixed() ?? null,
            high: check.high?.toFixed() ?? null,
            unit: shown,
          };
        }),
    })),
    allergenNames: facts.allergenNames,
    allergensUnknown: facts.allergensUnknown,
  };
};

const sheetLines = (
  line: BatchView['lines'][number],
  facts: SheetFacts,
): BatchSheetView['lines'] => {
  const head = {
    itemName: line.itemName,
    role: line.role,
    unit: line.unit === 'pc' ? 'pc' : 'g',
  } as const;
  let restQuantity = new Decimal(line.plannedQuantity);
  const lots = line.proposedLots.flatMap((lot) => {
    const take = Decimal.min(restQuantity, lot.onHandQuantity);
    if (take.lessThanOrEqualTo(0)) return [];
    restQuantity = restQuantity.minus(take);
    return [
      {
        ...head,
        quantity: take.toFixed(3),
        lotCode: lot.lotCode,
        lotDate: lot.date,
        isUseBy: facts.useByLots.has(lot.lotCode),
      },
    ];
  });
  // What no proposed lot covers is left open, to be written by hand.
  return restQuantity.greaterThan(0)
    ? [
        ...lots,
        {
          ...head,
          quantity: restQuantity.toFixed(3),
          lotCode: null,
          lotDate: null,
          isUseBy: false,
        },
      ]
    : lots;
};
