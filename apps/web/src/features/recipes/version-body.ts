import type { components } from '../../api/schema';
import type { LineForm, VersionForm } from './version-form';

type Dto = components['schemas']['RecipeVersionDto'];

const orNull = (value: string): string | null => (value.trim() === '' ? null : value.trim());
const wholeOrNull = (value: string): number | null => (value === '' ? null : Number(value));

/** Lines that say what and how much; the half-written one at the end waits. */
const written = (form: VersionForm): readonly LineForm[] =>
  form.lines.filter(({ itemId, quantity }) => itemId !== '' && quantity !== '');

export const isAnalysable = (form: VersionForm): boolean => written(form).length > 0;

/** What is sent of the form: half-written lines, steps and losses stay behind. */
export const bodyOf = (form: VersionForm): Dto =>
  ({
    lines: written(form).map(({ itemId, quantity, role, note }) => ({
      itemId,
      quantity,
      role,
      note,
    })),
    expectedLosses: form.losses.filter(({ percent, step }) => percent !== '' && step !== ''),
    steps: form.steps
      .filter(({ title }) => title !== '')
      .map((step) => ({
        title: step.title,
        text: step.text,
        restHours: orNull(step.restHours),
        checks: step.checks.map(({ measure, low, high, unit }) => ({
          measure,
          low: orNull(low),
          high: orNull(high),
          ...(unit === undefined ? {} : { unit }),
        })),
      })),
    yieldGrams: orNull(form.yieldGrams),
    yieldPieces: wholeOrNull(form.yieldPieces),
    shelfLifeDays: wholeOrNull(form.shelfLifeDays),
    shelfLifeBasis: orNull(form.shelfLifeBasis),
    shelfLifeDocument: orNull(form.shelfLifeDocument),
    dateKind: form.dateKind,
    lifeAfterThawDays: wholeOrNull(form.lifeAfterThawDays),
    labourMinutes: orNull(form.labourMinutes),
    labourRole: orNull(form.labourRole),
    mouldDesignId: orNull(form.mouldDesignId),
    ganacheUse: orNull(form.ganacheUse),
    note: orNull(form.note),
  }) as Dto;
