import { stringify } from 'csv-stringify/sync';
import { inEnglish } from '../../domain/words/say';

/** A cell that a spreadsheet would run as a formula gets an apostrophe, as OWASP advises. */
const harmless = (cell: string): string =>
  /^[=+\-@\t\r]/.test(cell) && !isNumber(cell) ? `'${cell}` : cell;

const isNumber = (cell: string): boolean => /^[+-]?\d+(\.\d+)?$/.test(cell);

/** One line with its end. Commas, quotes and line breaks inside a cell are quoted (RFC 4180). */
export const csvLine = (cells: readonly (string | number | null)[]): string =>
  stringify([cells.map((cell) => (cell === null ? '' : harmless(inEnglish(String(cell)))))], {
    record_delimiter: 'windows',
  });

export const csvText = (
  header: readonly string[],
  rows: readonly (readonly (string | number | null)[])[],
): string => [header, ...rows].map(csvLine).join('');
