import { placeText, type Mark, type TextStyle } from './drawing';
import { widestWord } from './set-text';
import type { Words } from './words';

/** A word or symbol that is wider than the label. */
export interface TooWide {
  readonly what: string;
  readonly neededMm: number;
}

export interface Part {
  readonly name: string;
  readonly heightMm: number;
}

/** Marks that pile up from the top of a label, part by part. */
export class Stack {
  readonly marks: Mark[] = [];
  readonly parts: Part[] = [];
  tooWide: TooWide | undefined;

  constructor(
    readonly xMm: number,
    readonly widthMm: number,
    private atMm: number,
  ) {}

  get endMm(): number {
    return this.atMm;
  }

  noteTooWide(what: string, neededMm: number): void {
    if (neededMm <= this.widthMm + 0.01) return;
    if (this.tooWide === undefined || neededMm > this.tooWide.neededMm) {
      this.tooWide = { what, neededMm };
    }
  }

  space(heightMm: number): void {
    this.atMm += heightMm;
  }

  text(words: Words, style: TextStyle): void {
    const widest = widestWord(words, style.sizePt);
    this.noteTooWide(`“${widest.text.slice(0, 60)}”`, widest.widthMm);
    const at = { xMm: this.xMm, yMm: this.atMm, widthMm: this.widthMm };
    const { marks, heightMm } = placeText(words, at, style);
    this.marks.push(...marks);
    this.atMm += heightMm;
  }

  rule(colour: string, heightMm: number): void {
    const at = { xMm: this.xMm, yMm: this.atMm, widthMm: this.widthMm };
    this.marks.push({ kind: 'rule', ...at, heightMm, colour });
    this.atMm += heightMm;
  }

  /** Does a part's work and remembers how high it came out. */
  part(name: string, work: () => void): void {
    const before = this.atMm;
    work();
    this.parts.push({ name, heightMm: this.atMm - before });
  }
}
