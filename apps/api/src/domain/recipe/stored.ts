import type { LossKind, StepLoss } from '../scaling';
import { Decimal } from '../units';
import type { RecipeStep } from './recipe';

const LOSS_KINDS: readonly string[] = [
  'steam', 'held_back', 'scrapings', 'rejects', 'samples', 'other',
]; // prettier-ignore

const NUMBER = /^-?\d+(\.\d+)?$/;

const field = (value: unknown, name: string): unknown =>
  typeof value === 'object' && value !== null ? Reflect.get(value, name) : undefined;

const textOf = (value: unknown, name: string): string | null => {
  const found = field(value, name);
  return typeof found === 'string' || typeof found === 'number' ? String(found) : null;
};

const decimalOf = (value: unknown, name: string): Decimal | null => {
  const text = textOf(value, name);
  return text !== null && NUMBER.test(text) ? new Decimal(text) : null;
};

const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

/** Expected losses as they are stored with a version; an entry that can't be read is none. */
export const readLosses = (stored: unknown): StepLoss[] =>
  listOf(stored).flatMap((entry): StepLoss[] => {
    const kind = textOf(entry, 'kind');
    const percent = decimalOf(entry, 'percent');
    if (kind === null || !LOSS_KINDS.includes(kind) || !percent) return [];
    const roles = field(entry, 'roles');
    const afterLine = decimalOf(entry, 'afterLine');
    const retentionRatio = decimalOf(entry, 'retentionRatio');
    return [
      {
        step: textOf(entry, 'step') ?? '',
        kind: kind as LossKind,
        percent,
        ...(Array.isArray(roles) ? { roles: roles.map(String) } : {}),
        ...(afterLine ? { afterLine: afterLine.toNumber() } : {}),
        ...(retentionRatio ? { retentionRatio } : {}),
      },
    ];
  });

/** Steps with their check points as they are stored with a version. */
export const readSteps = (stored: unknown): RecipeStep[] =>
  listOf(stored).map((step) => ({
    title: textOf(step, 'title') ?? '',
    text: textOf(step, 'text') ?? '',
    restHours: decimalOf(step, 'restHours'),
    checks: listOf(field(step, 'checks')).flatMap((check) => {
      const measure = textOf(check, 'measure');
      if (measure === null) return [];
      return [{ measure, low: decimalOf(check, 'low'), high: decimalOf(check, 'high') }];
    }),
  }));
