import { PAGE_SIZES_MM } from '../../domain/printing';
import { HAIRLINE, placeText, type Mark, type TextStyle } from './drawing';
import type { PaperContext } from './paper-context';
import { Pdf } from './pdf';
import { substituteSigns } from './printable';
import { pageFurniture } from './sheet-furniture';
import { BODY, MARGIN_MM } from './sheet-style';
import { asRuns, type Run, type Words } from './words';
import { spaced } from '../../domain/words/french/spacing';
import { inLanguage } from '../../domain/words/in-language';

const FOOT_MM = 18;
const RUNNING_HEAD_MM = 11;

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
      const { language } = this.context;
      const worded = inLanguage(run.text, language);
      const said = language === 'fr' ? spaced(worded) : worded;
      const text = substituteSigns(said);
      if (text.includes('\u25A1') && !said.includes('\u25A1')) this.hasSubstitutes = true;
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

  finish(): Promise<Buffer> {
    const { language, workshop, createdAt } = this.context;
    const pdf = new Pdf({ title: this.title, language, author: workshop.name, createdAt });
    for (const [index, marks] of this.pages.entries()) {
      pdf.addPage(...this.pageSize);
      pdf.draw({ marks });
      pdf.draw({
        marks: pageFurniture(this, {
          title: this.title,
          page: index + 1,
          count: this.pages.length,
          hasSubstitutes: this.hasSubstitutes,
        }),
      });
    }
    return pdf.finish();
  }
}
