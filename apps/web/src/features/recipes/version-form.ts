import type { components } from '../../api/schema';
import { newId } from '../../api/new-id';

type Version = components['schemas']['RecipeVersionView'];
type LineDto = components['schemas']['RecipeLineDto'];
type LossDto = components['schemas']['ExpectedLossDto'];

export interface LineForm {
  readonly key: string;
  readonly itemId: string;
  readonly itemName: string;
  readonly unit: string;
  readonly quantity: string;
  readonly role: LineDto['role'];
  /** Not edited here, and not lost either. */
  readonly note: string | null;
}

export interface CheckForm {
  readonly measure: string;
  readonly low: string;
  readonly high: string;
  /** Not edited here, and not lost either, as long as the same is measured. */
  readonly unit?: string;
}

export interface StepForm {
  readonly key: string;
  readonly title: string;
  readonly text: string;
  readonly restHours: string;
  readonly checks: readonly CheckForm[];
}

/** A recipe version while it is written: everything as text. */
export interface VersionForm {
  readonly lines: readonly LineForm[];
  readonly losses: readonly LossDto[];
  readonly steps: readonly StepForm[];
  readonly yieldGrams: string;
  readonly yieldPieces: string;
  readonly shelfLifeDays: string;
  readonly shelfLifeBasis: string;
  readonly shelfLifeDocument: string;
  readonly dateKind: string;
  readonly lifeAfterThawDays: string;
  readonly labourMinutes: string;
  readonly labourRole: string;
  readonly mouldDesignId: string;
  readonly ganacheUse: string;
  readonly note: string;
}

const text = (value: string | number | null): string => (value === null ? '' : String(value));

export const newLine = (role: LineDto['role']): LineForm => ({
  key: newId(),
  itemId: '',
  itemName: '',
  unit: 'g',
  quantity: '',
  role,
  note: null,
});

const lineOf = (line: Version['lines'][number]): LineForm => ({
  key: newId(),
  itemId: line.itemId,
  itemName: line.itemName,
  unit: line.unit,
  quantity: line.quantity,
  role: line.role as LineDto['role'],
  note: line.note,
});

const stepOf = (step: Version['steps'][number]): StepForm => ({
  key: newId(),
  title: step.title,
  text: step.text ?? '',
  restHours: step.restHours ?? '',
  checks: (step.checks ?? []).map(({ measure, low, high, unit }) => ({
    measure,
    low: low ?? '',
    high: high ?? '',
    ...(unit === undefined ? {} : { unit }),
  })),
});

/** A recipe that nobody has written yet. */
const empty: VersionForm = {
  lines: [],
  losses: [],
  steps: [],
  yieldGrams: '',
  yieldPieces: '',
  shelfLifeDays: '',
  shelfLifeBasis: '',
  shelfLifeDocument: '',
  dateKind: 'best_before',
  lifeAfterThawDays: '',
  labourMinutes: '',
  labourRole: '',
  mouldDesignId: '',
  ganacheUse: '',
  note: '',
};

export const formOf = (version: Version | undefined): VersionForm =>
  version === undefined
    ? empty
    : {
        lines: version.lines.map(lineOf),
        losses: version.expectedLosses,
        steps: version.steps.map(stepOf),
        yieldGrams: text(version.yieldGrams),
        yieldPieces: text(version.yieldPieces),
        shelfLifeDays: text(version.shelfLifeDays),
        shelfLifeBasis: text(version.shelfLifeBasis),
        shelfLifeDocument: text(version.shelfLifeDocument),
        dateKind: version.dateKind,
        lifeAfterThawDays: text(version.lifeAfterThawDays),
        labourMinutes: text(version.labourMinutes),
        labourRole: text(version.labourRole),
        mouldDesignId: text(version.mouldDesignId),
        ganacheUse: text(version.ganacheUse),
        note: text(version.note),
      };
