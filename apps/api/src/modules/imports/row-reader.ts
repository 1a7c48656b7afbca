import { Temporal } from 'temporal-polyfill';
import type { CsvRow, ImportProblem } from './csv-table';
import { say, type Sentence } from '../../domain/words/say';

/** Reads the cells of one line and gathers what is wrong with them. */
export class RowReader {
  readonly problems: ImportProblem[] = [];

  constructor(private readonly row: CsvRow) {}

  get line(): number {
    return this.row.line;
  }

  problem(column: string | null, message: Sentence): void {
    this.problems.push({ line: this.row.line, column, message });
  }

  /** True when the file has the column: what it doesn't have is left as it is. */
  has(column: string): boolean {
    return this.row.cells.has(column);
  }

  text(column: string, max = 200): string | null {
    const cell = this.row.cells.get(column) ?? '';
    if (cell === '') return null;
    if (cell.length <= max) return cell;
    this.problem(column, say`is longer than ${max} characters`);
    return null;
  }

  needed(column: string, max = 200): string {
    const cell = this.text(column, max);
    if (cell === null && !this.problems.some((row) => row.column === column)) {
      this.problem(column, say`is missing`);
    }
    return cell ?? '';
  }

  choice(column: string, choices: readonly string[]): string | null {
    const cell = this.text(column);
    if (cell === null || choices.includes(cell)) return cell;
    this.problem(column, say`must be one of: ${choices.join(', ')}`);
    return null;
  }

  flag(column: string): boolean | null {
    const cell = this.text(column)?.toLowerCase() ?? null;
    if (cell === null) return null;
    if (['yes', 'true', '1'].includes(cell)) return true;
    if (['no', 'false', '0'].includes(cell)) return false;
    this.problem(column, say`must be yes or no`);
    return null;
  }

  /** A decimal with a point, as the service writes it; a comma is named, never guessed at. */
  decimal(column: string, places: number): string | null {
    const cell = this.text(column);
    if (cell === null) return null;
    if (new RegExp(`^\\d{1,10}(\\.\\d{1,${String(places)}})?$`).test(cell)) return cell;
    const hint = cell.includes(',') ? say`; write a point, not a comma` : '';
    this.problem(column, say`must be a number with at most ${places} decimals${hint}`);
    return null;
  }

  day(column: string): string | null {
    const cell = this.text(column);
    if (cell === null) return null;
    try {
      if (/^\d{4}-\d{2}-\d{2}$/.test(cell)) {
        return Temporal.PlainDate.from(cell, { overflow: 'reject' }).toString();
      }
    } catch {
      // Falls through to the same problem as a text that is no day at all.
    }
    this.problem(column, say`must be a day, as 2026-11-25`);
    return null;
  }

  /** Entries parted by spaces or semicolons. */
  list(column: string, allowed: readonly string[]): string[] {
    const entries = (this.text(column, 1000) ?? '').split(/[\s;]+/).filter((entry) => entry !== '');
    for (const entry of entries) {
      if (!allowed.includes(entry))
        this.problem(column, say`“${entry}” is not one of: ${allowed.join(', ')}`);
    }
    return entries;
  }

  json(column: string): unknown {
    const cell = this.text(column, 100_000);
    if (cell === null) return null;
    try {
      return JSON.parse(cell) as unknown;
    } catch {
      this.problem(column, say`is not readable as JSON`);
      return null;
    }
  }
}
