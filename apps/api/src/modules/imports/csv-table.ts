import { CsvError, parse } from 'csv-parse/sync';
import { textProblem, tidyText } from '../../domain/specification';
import { say } from '../../domain/words/say';

export interface ImportProblem {
  /** Line of the file, counted from 1; the header is line 1. */
  readonly line: number;
  readonly column: string | null;
  readonly message: string;
}

export interface CsvRow {
  readonly line: number;
  readonly cells: ReadonlyMap<string, string>;
}

export interface CsvTable {
  readonly rows: readonly CsvRow[];
  readonly problems: readonly ImportProblem[];
}

const MOST_ROWS = 5000;

interface ParsedLine {
  readonly record: readonly string[];
  readonly info: { readonly lines: number };
}

/** Spreadsheets in many languages write semicolons; the header tells. */
const delimiterOf = (text: string): string => {
  const header = text.slice(0, text.search(/[\r\n]|$/));
  return (header.match(/;/g) ?? []).length > (header.match(/,/g) ?? []).length ? ';' : ',';
};

/** Exports put an apostrophe before what a spreadsheet would run; it is no part of the value. */
const unguarded = (cell: string): string => (/^'[=+\-@\t\r]/.test(cell) ? cell.slice(1) : cell);

const problem = (line: number, column: string | null, message: string): CsvTable => ({
  rows: [],
  problems: [{ line, column, message }],
});

const parsed = (text: string): ParsedLine[] | ImportProblem => {
  try {
    return parse(text, {
      bom: true,
      delimiter: delimiterOf(text),
      info: true,
      relax_column_count: true,
      skip_empty_lines: true,
      trim: true,
    }) as unknown as ParsedLine[];
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    const line: unknown = error['lines'];
    return {
      line: typeof line === 'number' ? line : 1,
      column: null,
      message: say`is not readable as CSV`,
    };
  }
};

/** Reads a CSV text whose first line names the columns, in any order. Gathers every problem. */
export const readTable = (
  text: string,
  columns: readonly string[],
  required: readonly string[],
): CsvTable => {
  const lines = parsed(text);
  if (!Array.isArray(lines)) return { rows: [], problems: [lines] };
  const [header, ...body] = lines;
  if (!header)
    return problem(1, null, say`is empty; the first line names columns: ${columns.join(', ')}`);
  if (body.length > MOST_ROWS) return problem(1, null, say`has more than ${MOST_ROWS} lines`);
  const names = header.record.map((name) => name.toLowerCase());
  const problems = headerProblems(names, columns, required);
  if (problems.length > 0) return { rows: [], problems };
  const rows: CsvRow[] = [];
  for (const { record, info } of body) {
    if (record.length !== names.length) {
      const message = say`has ${record.length} cells; the header has ${names.length}`;
      problems.push({ line: info.lines, column: null, message });
      continue;
    }
    const cells = new Map(names.map((name, i) => [name, tidyText(unguarded(record[i] ?? ''))]));
    for (const [column, cell] of cells) {
      const wrong = column.endsWith('_json') || cell === '' ? null : textProblem(cell);
      if (wrong !== null) problems.push({ line: info.lines, column, message: wrong });
    }
    rows.push({ line: info.lines, cells });
  }
  return { rows, problems };
};

const headerProblems = (
  names: readonly string[],
  columns: readonly string[],
  required: readonly string[],
): ImportProblem[] => [
  ...names
    .filter((name) => !columns.includes(name))
    .map((name) => ({
      line: 1,
      column: name,
      message: say`is no column here: ${columns.join(', ')}`,
    })),
  ...names
    .filter((name, index) => names.indexOf(name) !== index)
    .map((name) => ({ line: 1, column: name, message: say`stands twice in the header` })),
  ...required
    .filter((name) => !names.includes(name))
    .map((name) => ({ line: 1, column: name, message: say`is missing from the header` })),
];
