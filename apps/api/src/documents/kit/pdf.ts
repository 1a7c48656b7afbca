import PDFDocument from 'pdfkit';
import type { Drawing, Mark, SymbolMark, TextMark } from './drawing';
import { FACES, fontFile, mmToPt } from './fonts';

/** What a reader of the file, or of its properties, is told. */
export interface PdfHead {
  readonly title: string;
  /** ISO 639-1 of the words on it. */
  readonly language: string;
  /** The workshop. */
  readonly author: string;
  /** The only moment that the file names, so that the same content gives the same bytes. */
  readonly createdAt: Date;
}

const drawText = (doc: PDFKit.PDFDocument, mark: TextMark, xMm: number, yMm: number): void => {
  doc.fontSize(mark.sizePt);
  const isTurned = mark.turned === true;
  if (isTurned) {
    doc.save().rotate(-90, { origin: [mmToPt(xMm + mark.xMm), mmToPt(yMm + mark.yMm)] });
  }
  for (const { text, face, xMm: fragmentX } of mark.line.fragments) {
    doc.font(face).text(text, mmToPt(xMm + mark.xMm + fragmentX), mmToPt(yMm + mark.yMm), {
      lineBreak: false,
      baseline: 'alphabetic',
    });
  }
  if (isTurned) doc.restore();
};

/** Full black: what scanners are made for. */
const SYMBOL_INK = '#000000';

/** All bars are one path, filled once, so that no renderer leaves seams between rows. */
const drawSymbol = (doc: PDFKit.PDFDocument, mark: SymbolMark, xMm: number, yMm: number): void => {
  const { symbol, moduleMm } = mark;
  const left = mmToPt(xMm + mark.xMm + symbol.quiet.left * moduleMm);
  const top = mmToPt(yMm + mark.yMm + symbol.quiet.around * moduleMm);
  const module = mmToPt(moduleMm);
  for (const { x, y, width, height } of symbol.bars) {
    doc.rect(left + x * module, top + y * module, width * module, height * module);
  }
  doc.fill();
};

/** The ink that a mark is filled with; a frame has a colour of its own and changes no ink. */
const inkOf = (mark: Mark): string | undefined => {
  if (mark.kind === 'box') return undefined;
  return mark.kind === 'symbol' ? SYMBOL_INK : mark.colour;
};

/** Draws in the ink that is set. */
const drawMark = (doc: PDFKit.PDFDocument, mark: Mark, xMm: number, yMm: number): void => {
  switch (mark.kind) {
    case 'text':
      drawText(doc, mark, xMm, yMm);
      return;
    case 'symbol':
      drawSymbol(doc, mark, xMm, yMm);
      return;
    case 'rule':
      doc
        .rect(
          mmToPt(xMm + mark.xMm),
          mmToPt(yMm + mark.yMm),
          mmToPt(mark.widthMm),
          mmToPt(mark.heightMm),
        )
        .fill();
      return;
    case 'box':
      doc
        .lineWidth(mmToPt(mark.lineMm))
        .rect(
          mmToPt(xMm + mark.xMm),
          mmToPt(yMm + mark.yMm),
          mmToPt(mark.widthMm),
          mmToPt(mark.heightMm),
        )
        .stroke('#1c1917');
      return;
    default:
      mark satisfies never;
  }
};

/** A PDF under construction: pages of drawings. */
export class Pdf {
  private readonly doc: PDFKit.PDFDocument;
  private readonly bytes: Promise<Buffer>;
  /** What the page's last mark was filled with: setting it anew for each would swell the file. */
  private ink: string | undefined;

  constructor(head: PdfHead) {
    this.doc = new PDFDocument({
      autoFirstPage: false,
      margin: 0,
      lang: head.language,
      displayTitle: true,
      pdfVersion: '1.7',
      info: {
        Title: head.title,
        Author: head.author,
        Creator: 'Ballotin',
        Producer: 'Ballotin',
        CreationDate: head.createdAt,
      },
    });
    for (const face of FACES) this.doc.registerFont(face, fontFile(face));
    const chunks: Buffer[] = [];
    this.bytes = new Promise((resolve, reject) => {
      this.doc.on('data', (chunk: Buffer) => chunks.push(chunk));
      this.doc.on('end', () => {
        resolve(Buffer.concat(chunks));
      });
      this.doc.on('error', reject);
    });
  }

  addPage(widthMm: number, heightMm: number): void {
    this.ink = undefined;
    this.doc.addPage({ size: [mmToPt(widthMm), mmToPt(heightMm)], margin: 0 });
  }

  /** Draws on the page that was added last. */
  draw({ marks }: Pick<Drawing, 'marks'>, xMm = 0, yMm = 0): void {
    for (const mark of marks) {
      const ink = inkOf(mark) ?? this.ink;
      if (ink !== undefined && ink !== this.ink) this.doc.fillColor(ink);
      this.ink = ink;
      drawMark(this.doc, mark, xMm, yMm);
    }
  }

  finish(): Promise<Buffer> {
    this.doc.end();
    return this.bytes;
  }
}
