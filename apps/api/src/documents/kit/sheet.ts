import { PAGE_SIZES_MM, type PageSize } from '../../domain/printing';
import { HAIRLINE, INK, placeText, SOFT, type Mark, type TextStyle } from './drawing';
import { instantText } from './formats';
import type { PaperLanguage } from './language';
import { Pdf } from './pdf';
import { substituteSigns } from './printable';
import { SHEET_WORDS } from './sheet.words';
import { asRuns, type Run, type Words } from './words';

/** What every paper of the workshop is told besides its own content. */
export interface PaperContext {
  readonly language: PaperLanguage;
  readonly workshop: {
    readonly name: string;
    readonly addressLines: readonly string[];
    readonly phone: string | null;
    readonly email: string | null;
  };
  readonly timeZone: string;
  readonly page: PageSize;
  /** Passed in, so that the same content gives the same bytes. */
  readonly createdAt: Date;
  readonly printedBy: string;
}

const MARGIN_MM = 18;
const FOOT_MM = 18;
const RUNNING_HEAD_MM = 11;
export const BODY: TextStyle = { sizePt: 9 };
const SMALL: TextStyle = { sizePt: 7.5, colour: SOFT };

/** A4 or Letter pages that fill from the top. Pages are kept as marks until the number is known. */
export class Sheet {
  readonly widthMm: number;
  readonly leftMm = MARGIN_MM;
  private readonly pages: Mark[][] = [[]];
  private readonly pageSize: readonly [number, number];
  private yMm = MARGIN_MM;
  private hasSubstitutes = false;

  constructor(
    readonly context: PaperContext,
    private readonly title: string,
    landscape = false,
  ) {
    const [short, long] = PAGE_SIZES_MM[context.page];
    this.pageSize = landscape ? [long, short] : [short, long];
    this.widthMm = this.pageSize[0] - 2 * MARGIN_MM;
  }

  get bottomMm(): number {
    return this.pageSize[1] - FOOT_MM;
  }
  get cursorMm(): number {
    return this.yMm;
  }
  get roomMm(): number {
    return this.bottomMm - this.yMm;
  }
  /** Room on a page that has nothing on it yet but its running head. */
  get pageRoomMm(): number {
    return this.bottomMm - MARGIN_MM - RUNNING_HEAD_MM;
  }

  /** A paper must come out, so a sign that can't be printed is replaced, and the last page says so. */
  printable(words: Words): Run[] {
    return asRuns(words).map((run) => {
      const text = substituteSigns(run.text);
      if (text.includes('\u25A1') && !run.text.includes('\u25A1')) this.hasSubstitutes = true;
      return { ...run, text };
    });
  }

  add(...marks: readonly Mark[]): void {
    this.pages[this.pages.length - 1]?.push(...marks);
  }

  space(heightMm: number): void {
    this.yMm += heightMm;
  }

  newPage(): void {
    this.pages.push([]);
    this.yMm = MARGIN_MM + RUNNING_HEAD_MM;
  }

  /** Begins a new page unless that much height is left. */
  need(heightMm: number): void {
    if (this.roomMm < heightMm) this.newPage();
  }

  /** A paragraph over the whole width, or over a part of it; moves on below. */
  text(words: Words, style: TextStyle = BODY, widthMm = this.widthMm, indentMm = 0): void {
    const at = { xMm: this.leftMm + indentMm, yMm: 0, widthMm };
    const { marks, heightMm } = placeText(this.printable(words), at, style);
    const lineMm = marks.length === 0 ? 0 : heightMm / marks.length;
    for (const mark of marks) {
      this.need(lineMm);
      const firstMm = marks[0]?.yMm ?? 0;
      this.add({ ...mark, yMm: this.yMm + firstMm });
      this.yMm += lineMm;
    }
  }

  rule(colour: string = HAIRLINE, heightMm = 0.2): void {
    const at = { xMm: this.leftMm, yMm: this.yMm, widthMm: this.widthMm };
    this.add({ kind: 'rule', ...at, heightMm, colour });
  }

  private furniture(page: number, count: number): Mark[] {
    const { workshop, language, createdAt, timeZone, printedBy } = this.context;
    const words = SHEET_WORDS[language];
    const line = (text: string, yMm: number, align: 'left' | 'right'): readonly Mark[] =>
      placeText(
        this.printable(text),
        { xMm: this.leftMm, yMm, widthMm: this.widthMm },
        { ...SMALL, align },
      ).marks;
    const footMm = this.bottomMm + 5;
    const printed = words.printed(instantText(createdAt, timeZone, language), printedBy);
    const note = page === count && this.hasSubstitutes ? ` · ${words.substitutes}` : '';
    const head: Mark[] =
      page === 1
        ? []
        : [
            ...line(this.title, MARGIN_MM - 2, 'left'),
            {
              kind: 'rule',
              xMm: this.leftMm,
              yMm: MARGIN_MM + 3,
              widthMm: this.widthMm,
              heightMm: 0.2,
              colour: HAIRLINE,
            },
          ];
    return [
      ...head,
      {
        kind: 'rule',
        xMm: this.leftMm,
        yMm: footMm - 1.5,
        widthMm: this.widthMm,
        heightMm: 0.2,
        colour: HAIRLINE,
      },
      ...line(`${workshop.name} · ${printed}${note}`, footMm, 'left'),
      ...line(words.page(page, count), footMm, 'right'),
    ];
  }

  finish(): Promise<Buffer> {
    const { language, workshop, createdAt } = this.context;
    const pdf = new Pdf({ title: this.title, language, author: workshop.name, createdAt });
    for (const [index, marks] of this.pages.entries()) {
      pdf.addPage(...this.pageSize);
      pdf.draw({ marks });
      pdf.draw({ marks: this.furniture(index + 1, this.pages.length) });
    }
    return pdf.finish();
  }
}

export const HEADING: TextStyle = { sizePt: 11, colour: INK };
export { SMALL };
