import { refuse, type Result } from '../refusals/result';
import type { PrintingRefusal } from './refusals';
import { checkStock, PAGE_SIZES_MM, type LabelStock } from './stock';
import { say, type Sentence } from '../words/say';

/** Every measure of a kind of stock; each must be a number. */
const MEASURES: Readonly<Record<LabelStock['kind'], readonly string[]>> = {
  roll: ['widthMm', 'marginMm'],
  die_cut: ['widthMm', 'heightMm', 'marginMm'],
  sheet: [
    'columns', 'rows', 'labelWidthMm', 'labelHeightMm', 'leftMm', 'topMm', 'pitchXMm', 'pitchYMm',
    'marginMm', 'startAt',
  ],
}; // prettier-ignore

const notValid = (detail: Sentence): Result<never, PrintingRefusal> =>
  refuse({ code: 'stock-not-valid', detail });

/** Untrusted JSON as label stock: its kind, its measures, and whether such a stock can exist. */
export const readStock = (
  json: Readonly<Record<string, unknown>>,
): Result<LabelStock, PrintingRefusal> => {
  const kinds = Object.keys(MEASURES) as LabelStock['kind'][];
  const kind = kinds.find((known) => known === json['kind']);
  if (kind === undefined) return notValid(say`Label stock is one of: ${kinds.join(', ')}.`);
  const wrong = MEASURES[kind].filter((name) => !Number.isFinite(json[name]));
  if (wrong.length > 0) {
    return notValid(say`These measures of the stock must be numbers: ${wrong.join(', ')}.`);
  }
  const pages = Object.keys(PAGE_SIZES_MM);
  if (kind === 'sheet' && !pages.includes(String(json['page']))) {
    return notValid(say`A sheet’s page is one of: ${pages.join(', ')}.`);
  }
  return checkStock(json as unknown as LabelStock);
};
