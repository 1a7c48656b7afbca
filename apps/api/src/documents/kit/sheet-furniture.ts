import { HAIRLINE, placeText, type Mark } from './drawing';
import { instantText } from './formats';
import type { PaperContext } from './paper-context';
import { MARGIN_MM, SMALL } from './sheet-style';
import { SHEET_WORDS } from './sheet.words';
import type { Run, Words } from './words';

/** The page's measures, and what turns words into printable ones. */
export interface PageFrame {
  readonly context: PaperContext;
  readonly leftMm: number;
  readonly widthMm: number;
  readonly bottomMm: number;
  printable(words: Words): Run[];
}

export interface PageOf {
  readonly title: string;
  readonly page: number;
  readonly count: number;
  readonly hasSubstitutes: boolean;
}

/** What stands on every page: the title (from the second on), who printed it and when, the number. */
export const pageFurniture = (sheet: PageFrame, of: PageOf): Mark[] => {
  const { workshop, language, createdAt, timeZone, printedBy } = sheet.context;
  const words = SHEET_WORDS[language];
  const place = { xMm: sheet.leftMm, widthMm: sheet.widthMm };
  const line = (text: string, yMm: number, align: 'left' | 'right'): readonly Mark[] =>
    placeText(sheet.printable(text), { ...place, yMm }, { ...SMALL, align }).marks;
  const rule = (yMm: number): Mark => ({
    kind: 'rule',
    ...place,
    yMm,
    heightMm: 0.2,
    colour: HAIRLINE,
  });
  const footMm = sheet.bottomMm + 5;
  const printed = words.printed(instantText(createdAt, timeZone, language), printedBy);
  const note = of.page === of.count && of.hasSubstitutes ? ` · ${words.substitutes}` : '';
  return [
    ...(of.page === 1 ? [] : [...line(of.title, MARGIN_MM - 2, 'left'), rule(MARGIN_MM + 3)]),
    rule(footMm - 1.5),
    ...line(`${workshop.name} · ${printed}${note}`, footMm, 'left'),
    ...line(words.page(of.page, of.count), footMm, 'right'),
  ];
};
