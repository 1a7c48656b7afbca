import { INK, placeText, SOFT, type Mark } from './drawing';
import { labelled } from './formats';
import { lineHeightMm, setText } from './set-text';
import type { Sheet } from './sheet';
import { BODY, HEADING, SMALL } from './sheet-style';
import { SHEET_WORDS } from './sheet.words';
import { BOLD_MODULE_MM, barSymbol, symbolSize, type SymbolKind } from './symbols';
import type { Words } from './words';

const TITLE_PT = 20;

/** Title of a paper: the workshop above it, a line of what it is about below. */
export const titleBlock = (
  sheet: Sheet,
  title: string,
  about: Words,
  symbol?: { readonly kind: SymbolKind; readonly text: string },
): void => {
  const top = sheet.cursorMm;
  const { workshop } = sheet.context;
  const code = symbol === undefined ? undefined : barSymbol(symbol.kind, symbol.text);
  const size = code === undefined ? undefined : symbolSize(code, BOLD_MODULE_MM);
  const widthMm = sheet.widthMm - (size === undefined ? 0 : size.widthMm + 4);
  sheet.text([{ text: workshop.name, strong: true }], { sizePt: 8.5, colour: SOFT }, widthMm);
  sheet.space(1);
  sheet.text([{ text: title, strong: true }], { sizePt: TITLE_PT, colour: INK }, widthMm);
  sheet.space(0.8);
  sheet.text(about, { sizePt: 10, colour: INK }, widthMm);
  if (code !== undefined && size !== undefined) {
    const xMm = sheet.leftMm + sheet.widthMm - size.widthMm + code.quiet.right * BOLD_MODULE_MM;
    sheet.add({ kind: 'symbol', symbol: code, xMm, yMm: top - 2, moduleMm: BOLD_MODULE_MM });
    sheet.space(Math.max(0, top + size.heightMm - 2 - sheet.cursorMm));
  }
  sheet.space(2.5);
  sheet.rule(INK, 0.35);
  sheet.space(4);
};

export const heading = (sheet: Sheet, words: string, style = HEADING): void => {
  sheet.need(18);
  sheet.space(3);
  sheet.text([{ text: words, strong: true }], style);
  sheet.space(1.5);
};

/** A short caution, kept together, with a bar at its side and the word in bold. */
export const caution = (sheet: Sheet, words: string): void => {
  const indentMm = 4;
  const { language } = sheet.context;
  const lead = labelled(SHEET_WORDS[language].caution, '', language);
  const runs = sheet.printable([{ text: lead, strong: true }, { text: words }]);
  const widthMm = sheet.widthMm - indentMm;
  const heightMm = setText(runs, widthMm, BODY.sizePt).length * lineHeightMm(BODY.sizePt);
  sheet.need(heightMm + 4);
  const yMm = sheet.cursorMm;
  sheet.add({ kind: 'rule', xMm: sheet.leftMm, yMm, widthMm: 0.9, heightMm, colour: INK });
  sheet.text(runs, BODY, widthMm, indentMm);
  sheet.space(3);
};

/** Pairs of a name and what it is, the names in a column of their own. */
export const facts = (
  sheet: Sheet,
  pairs: readonly (readonly [string, Words])[],
  nameMm = 42,
): void => {
  for (const [name, value] of pairs) {
    const column = { xMm: sheet.leftMm + nameMm, yMm: 0, widthMm: sheet.widthMm - nameMm };
    const { heightMm } = placeText(sheet.printable(value), column, BODY);
    sheet.need(Math.min(heightMm, sheet.pageRoomMm));
    const label = placeText(
      sheet.printable(name),
      { xMm: sheet.leftMm, yMm: sheet.cursorMm, widthMm: nameMm - 3 },
      { ...BODY, colour: SOFT },
    );
    sheet.add(...label.marks);
    sheet.text(value, BODY, column.widthMm, nameMm);
    sheet.space(0.6);
  }
  sheet.space(2);
};

/** Lines to write on by hand, each with what belongs there. */
export const linesToWrite = (sheet: Sheet, names: readonly string[], lengthMm = 70): void => {
  for (const name of names) {
    sheet.need(9);
    const yMm = sheet.cursorMm + 3;
    const label = placeText(
      sheet.printable(name),
      { xMm: sheet.leftMm, yMm, widthMm: 50 },
      { ...BODY, colour: SOFT },
    );
    const rule: Mark = {
      kind: 'rule',
      xMm: sheet.leftMm + 52,
      yMm: yMm + 4.5,
      widthMm: lengthMm,
      heightMm: 0.2,
      colour: SOFT,
    };
    sheet.add(...label.marks, rule);
    sheet.space(9);
  }
};

export const smallPrint = (sheet: Sheet, words: string): void => {
  sheet.text(words, SMALL);
  sheet.space(1);
};
