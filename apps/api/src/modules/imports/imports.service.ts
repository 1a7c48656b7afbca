import { Injectable } from '@nestjs/common';
import { csvText } from '../../platform/csv/csv';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { goOn } from '../../platform/long-work/long-work';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, ProblemError } from '../../platform/problems';
import { readTable } from './csv-table';
import type { ImportDto, ImportReportView } from './imports.dto';
import { INGREDIENTS } from './ingredients.register';
import { PRICE_LISTS } from './prices.register';
import type { ImportPlan, Register } from './register';
import { SPECIFICATIONS } from './specifications.register';
import { say } from '../../domain/words/say';

const REGISTERS: ReadonlyMap<string, Register> = new Map([
  ['ingredients', INGREDIENTS],
  ['specifications', SPECIFICATIONS],
  ['price-lists', PRICE_LISTS],
]);

/** Takes whole registers in from CSV files, and gives them out in the same columns. */
@Injectable()
export class ImportsService {
  constructor(private readonly transactions: Transactions) {}

  export(name: string): Promise<string> {
    const register = registerOf(name);
    return this.transactions.read(async (tx) =>
      csvText(register.columns, await register.export(tx)),
    );
  }

  /** A dry run, unless it is said otherwise, lists every problem by line and writes nothing. */
  import(name: string, dto: ImportDto): Promise<ImportReportView> {
    const register = registerOf(name);
    if (dto.dryRun !== false) {
      return this.transactions.read(async (tx) =>
        reportOf(name, await planOf(tx, register, dto.csv), false),
      );
    }
    return this.transactions.book(async (tx, by) => {
      const plan = await planOf(tx, register, dto.csv);
      refuseUnclean(plan);
      for (const [done, line] of plan.lines.entries()) {
        await line.write(tx, by);
        await goOn({ done: done + 1, total: plan.lines.length });
      }
      noteInJournal(by, {
        action: 'register.imported',
        subjectKind: 'register',
        subjectId: name,
        detail: { lines: plan.lines.length },
      });
      return reportOf(name, plan, true);
    });
  }
}

const registerOf = (name: string): Register => orNotFound(REGISTERS.get(name), 'register', name);

const planOf = async (tx: Tx, register: Register, csv: string): Promise<ImportPlan> => {
  const table = readTable(csv, register.columns, register.required);
  if (table.rows.length === 0) return { lines: [], problems: table.problems };
  const plan = await register.plan(tx, table.rows);
  const problems = [...table.problems, ...plan.problems];
  return { lines: plan.lines, problems: problems.sort((a, b) => a.line - b.line) };
};

const refuseUnclean = (plan: ImportPlan): void => {
  if (plan.problems.length === 0) return;
  throw new ProblemError(
    'import-not-clean',
    422,
    say`The file is not clean`,
    say`Nothing was written. Put right what is named under "errors", line by line, and send it again.`,
    plan.problems.map(({ line, column, message }) => ({
      pointer: `/lines/${String(line)}${column === null ? '' : `/${column}`}`,
      message,
    })),
  );
};

const reportOf = (register: string, plan: ImportPlan, written: boolean): ImportReportView => {
  const count = (kind: string): number => plan.lines.filter((line) => line.kind === kind).length;
  return {
    register,
    lines: plan.lines.length,
    created: count('create'),
    changed: count('change'),
    unchanged: count('same'),
    problems: plan.problems.map((problem) => ({ ...problem })),
    written,
  };
};
