import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import type { CsvRow, ImportProblem } from './csv-table';
import { say } from '../../domain/words/say';

/** One line that may be written. Nothing is until every line of the file may. */
export interface PlannedLine {
  readonly kind: 'create' | 'change' | 'same';
  readonly write: (tx: Tx, by: By) => Promise<void>;
}

export interface ImportPlan {
  readonly lines: readonly PlannedLine[];
  readonly problems: readonly ImportProblem[];
}

/** A register that is imported and exported with the same columns. */
export interface Register {
  readonly columns: readonly string[];
  readonly required: readonly string[];
  readonly plan: (tx: Tx, rows: readonly CsvRow[]) => Promise<ImportPlan>;
  readonly export: (tx: Tx) => Promise<readonly (readonly (string | null)[])[]>;
}

/** Lines after the first that say the same thing again. */
export const repeated = (
  keys: readonly { readonly line: number; readonly key: string }[],
  column: string,
): ImportProblem[] => {
  const first = new Map<string, number>();
  return keys.flatMap(({ line, key }) => {
    const before = first.get(key);
    if (before === undefined) {
      first.set(key, line);
      return [];
    }
    return [{ line, column, message: say`“${key}” stands on line ${before} already` }];
  });
};
