import { HAIRLINE, INK, placeText, SOFT, type Mark } from '../kit/drawing';
import { dayText } from '../kit/formats';
import { lineHeightMm, setText } from '../kit/set-text';
import type { PaperContext } from '../kit/paper-context';
import { Sheet } from '../kit/sheet';
import { caution, titleBlock } from '../kit/sheet-parts';
import { MATRIX_WORDS, type Presence } from './allergen-matrix.words';
import { CAUTIONS } from './cautions.words';

export interface AllergenMatrixView {
  /** `YYYY-MM-DD`. */
  readonly day: string;
  /** In the order of the law's list, named in the paper's language. */
  readonly allergens: readonly { readonly code: string; readonly name: string }[];
  readonly rows: readonly {
    readonly name: string;
    /** An allergen that has no entry is unknown. */
    readonly presence: Readonly<Record<string, Presence>>;
  }[];
}

/** Signs that differ by shape, not by colour, and read the same in one ink. */
const SIGNS: Readonly<Record<Presence, string>> = {
  contains: '●',
  may_contain: '○',
  absent: '–',
  unknown: '?',
};

const NAME_MM = 62;
const ROW_PT = 9;
const HEAD_PT = 8;
const PAD_MM = 1.2;

const headMarks = (
  view: AllergenMatrixView,
  sheet: Sheet,
  columnMm: number,
  headMm: number,
): Mark[] => {
  const baseMm = sheet.cursorMm + headMm;
  const words = MATRIX_WORDS[sheet.context.language];
  const title = placeText(
    [{ text: words.piece, strong: true }],
    { xMm: sheet.leftMm, yMm: baseMm - lineHeightMm(HEAD_PT) - 1, widthMm: NAME_MM },
    { sizePt: HEAD_PT, colour: SOFT },
  );
  const names = view.allergens.flatMap(({ name }, index): Mark[] => {
    const [line] = setText([{ text: name, strong: true }], headMm * 2, HEAD_PT);
    if (line === undefined) return [];
    const xMm = sheet.leftMm + NAME_MM + (index + 0.5) * columnMm + lineHeightMm(HEAD_PT) / 4;
    return [
      { kind: 'text', line, xMm, yMm: baseMm - 1.5, sizePt: HEAD_PT, colour: INK, turned: true },
    ];
  });
  return [...title.marks, ...names];
};

const drawHead = (view: AllergenMatrixView, sheet: Sheet, columnMm: number): void => {
  const widest = Math.max(
    ...view.allergens.map(
      ({ name }) => setText([{ text: name, strong: true }], 500, HEAD_PT)[0]?.widthMm ?? 0,
    ),
    10,
  );
  const headMm = Math.min(widest + 3, 60);
  sheet.need(headMm + 20);
  sheet.add(...headMarks(view, sheet, columnMm, headMm));
  sheet.space(headMm);
  sheet.rule(INK, 0.25);
};

const drawRow = (
  row: AllergenMatrixView['rows'][number],
  view: AllergenMatrixView,
  sheet: Sheet,
  columnMm: number,
): void => {
  const at = { xMm: sheet.leftMm, yMm: sheet.cursorMm + PAD_MM, widthMm: NAME_MM - 2 };
  const name = placeText(sheet.printable([{ text: row.name, strong: true }]), at, {
    sizePt: ROW_PT,
  });
  const signs = view.allergens.flatMap(({ code }, index) => {
    const presence = row.presence[code] ?? 'unknown';
    const column = { ...at, xMm: sheet.leftMm + NAME_MM + index * columnMm, widthMm: columnMm };
    const sign = [{ text: SIGNS[presence], strong: presence !== 'absent' }];
    const colour = presence === 'absent' ? SOFT : INK;
    return placeText(sign, column, { sizePt: ROW_PT + 1, align: 'centre', colour }).marks;
  });
  sheet.add(...name.marks, ...signs);
  sheet.space(name.heightMm + 2 * PAD_MM);
  sheet.rule(HAIRLINE, 0.15);
};

/** The counter's matrix of loose pieces against allergens. */
export const allergenMatrix = (
  view: AllergenMatrixView,
  context: PaperContext,
): Promise<Buffer> => {
  const { language } = context;
  const words = MATRIX_WORDS[language];
  const sheet = new Sheet(context, words.title, true);
  titleBlock(sheet, words.title, words.asOf(dayText(view.day, language)));
  const legend = (Object.keys(SIGNS) as Presence[]).flatMap((presence) => [
    { text: `${SIGNS[presence]} `, strong: true },
    { text: `${words.signs[presence]}${presence === 'unknown' ? '' : '   ·   '}` },
  ]);
  sheet.text(legend);
  sheet.space(2);
  caution(sheet, CAUTIONS[language].allergens);
  const columnMm = Math.min(16, (sheet.widthMm - NAME_MM) / Math.max(1, view.allergens.length));
  drawHead(view, sheet, columnMm);
  for (const row of view.rows) {
    const lines = setText([{ text: row.name, strong: true }], NAME_MM - 2, ROW_PT).length;
    if (sheet.roomMm < lines * lineHeightMm(ROW_PT) + 2 * PAD_MM) {
      sheet.newPage();
      drawHead(view, sheet, columnMm);
    }
    drawRow(row, view, sheet, columnMm);
  }
  return sheet.finish();
};
