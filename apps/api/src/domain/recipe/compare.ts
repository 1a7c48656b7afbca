import { Decimal, ZERO } from '../units';
import type { RecipeContent } from './recipe';

export interface LineChange {
  readonly itemId: string;
  readonly role: string;
  readonly before: Decimal;
  readonly after: Decimal;
  /** Shares of all that is weighed in, per cent: what really changed when the batch size did too. */
  readonly beforePercent: Decimal | null;
  readonly afterPercent: Decimal | null;
  readonly kind: 'added' | 'removed' | 'changed' | 'same';
}

export interface FieldChange {
  readonly field: string;
  readonly before: string | null;
  readonly after: string | null;
}

export interface Comparison {
  readonly lines: readonly LineChange[];
  readonly fields: readonly FieldChange[];
}

type Totals = ReadonlyMap<string, Decimal>;

const SEPARATOR = '\n';

const totalsOf = (content: RecipeContent): Totals => {
  const totals = new Map<string, Decimal>();
  for (const { itemId, role, quantity } of content.lines) {
    const key = `${itemId}${SEPARATOR}${role}`;
    totals.set(key, quantity.plus(totals.get(key) ?? ZERO));
  }
  return totals;
};

const weighedIn = (content: RecipeContent): Decimal =>
  content.lines
    .filter((line) => line.unit === 'g' && line.role !== 'packaging')
    .reduce((total, line) => total.plus(line.quantity), ZERO);

/** Two versions of a recipe side by side: every line of either, and every other field that differs. */
export const compareVersions = (before: RecipeContent, after: RecipeContent): Comparison => {
  const [old, now] = [totalsOf(before), totalsOf(after)];
  const [oldSum, nowSum] = [weighedIn(before), weighedIn(after)];
  const percent = (quantity: Decimal | undefined, total: Decimal): Decimal | null =>
    quantity && total.greaterThan(0) ? quantity.times(100).dividedBy(total) : null;
  const lines = [...new Set([...old.keys(), ...now.keys()])].map((key): LineChange => {
    const [itemId = '', role = ''] = key.split(SEPARATOR);
    const [was, is] = [old.get(key), now.get(key)];
    return {
      itemId,
      role,
      before: was ?? ZERO,
      after: is ?? ZERO,
      beforePercent: percent(was, oldSum),
      afterPercent: percent(is, nowSum),
      kind: !was ? 'added' : !is ? 'removed' : was.equals(is) ? 'same' : 'changed',
    };
  });
  return { lines, fields: changedFields(fieldsOf(before), fieldsOf(after)) };
};

const text = (value: { toString(): string } | null): string | null => value?.toString() ?? null;

const fieldsOf = (content: RecipeContent): Record<string, string | null> => ({
  yieldGrams: text(content.yieldMassG),
  yieldPieces: text(content.yieldPieces),
  shelfLifeDays: text(content.life.days),
  shelfLifeBasis: content.life.basis,
  shelfLifeDocument: content.life.document,
  dateKind: content.dateKind,
  lifeAfterThawDays: text(content.lifeAfterThawDays),
  labourMinutes: text(content.labourMinutes),
  mouldDesignId: content.mouldDesignId,
  use: content.use,
  losses: content.losses
    .map((loss) => `${loss.step}: ${loss.kind} ${loss.percent.toString()} %`)
    .join('; '),
  steps: content.steps.map((step) => `${step.title}: ${step.text}`).join('; '),
  checks: content.steps
    .flatMap((step) =>
      step.checks.map((check) => `${step.title}: ${check.measure} ${rangeText(check)}`),
    )
    .join('; '),
});

const rangeText = (check: { low: Decimal | null; high: Decimal | null }): string =>
  `${check.low?.toString() ?? '…'}–${check.high?.toString() ?? '…'}`;

const changedFields = (
  before: Record<string, string | null>,
  after: Record<string, string | null>,
): FieldChange[] =>
  Object.keys(after)
    .filter((field) => before[field] !== after[field])
    .map((field) => ({ field, before: before[field] ?? null, after: after[field] ?? null }));
