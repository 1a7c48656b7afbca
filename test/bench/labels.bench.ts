import PDFDocument from 'pdfkit';
import { fitLabel, printLabels, type LabelRequest } from '@api/documents';
import { FACES, fontFile, mmToPt } from '@api/documents/kit/fonts';
import type { Drawing } from '@api/documents/kit/drawing';
import { sampleLabel } from '../support/papers/sample-label';
import { clocked, median, report } from './stopwatch';

const LABELS = 1000;
const ROUNDS = 3;
const AIM = 1.5;

const head = {
  title: 'Box labels',
  language: 'en',
  author: 'Atelier Lunebleue',
  createdAt: new Date('2026-11-25T13:05:00Z'),
};

const request: LabelRequest = {
  content: sampleLabel,
  symbols: [{ kind: 'qrcode', text: sampleLabel.lotCode, caption: null }],
  stock: { kind: 'roll', widthMm: 62, marginMm: 3 },
};

/** Every label is of another lot, so that each has to be laid out for itself. */
const labels = Array.from({ length: LABELS }, (_, index) => ({
  content: { ...sampleLabel, lotMark: `L261124-${String(index).padStart(4, '0')}` },
  symbols: request.symbols,
  copies: 1,
}));

const ours = async (): Promise<number> => {
  const printed = await printLabels(labels, request.stock, head);
  if (!printed.ok) throw new Error(printed.refusal.detail);
  return printed.value.pdf.length;
};

/** The same glyphs and bars at the same places, straight through pdfkit, with nothing laid out. */
const bare = async (drawing: Drawing): Promise<number> => {
  const doc = new PDFDocument({
    autoFirstPage: false,
    margin: 0,
    info: { CreationDate: head.createdAt },
  });
  for (const face of FACES) doc.registerFont(face, fontFile(face));
  let length = 0;
  doc.on('data', (chunk: Buffer) => {
    length += chunk.length;
  });
  const ended = new Promise((resolve) => doc.on('end', resolve));
  for (let label = 0; label < LABELS; label += 1) {
    doc.addPage({ size: [mmToPt(drawing.widthMm), mmToPt(drawing.heightMm)], margin: 0 });
    for (const mark of drawing.marks) {
      if (mark.kind === 'text') {
        doc.fontSize(mark.sizePt);
        for (const { text, face, xMm } of mark.line.fragments) {
          doc.font(face).text(text, mmToPt(mark.xMm + xMm), mmToPt(mark.yMm), {
            lineBreak: false,
            baseline: 'alphabetic',
          });
        }
      } else if (mark.kind === 'symbol') {
        const module = mmToPt(mark.moduleMm);
        for (const { x, y, width, height } of mark.symbol.bars) {
          doc.rect(
            mmToPt(mark.xMm) + x * module,
            mmToPt(mark.yMm) + y * module,
            width * module,
            height * module,
          );
        }
        doc.fill('#000000');
      } else if (mark.kind === 'rule') {
        doc
          .rect(mmToPt(mark.xMm), mmToPt(mark.yMm), mmToPt(mark.widthMm), mmToPt(mark.heightMm))
          .fill();
      }
    }
  }
  doc.end();
  await ended;
  return length;
};

it('prints 1,000 labels of 1,000 lots as one PDF', async () => {
  const fitted = fitLabel(request);
  if (!fitted.ok) throw new Error(fitted.refusal.detail);
  const { drawing } = fitted.value;
  const printed: number[] = [];
  const drawn: number[] = [];
  // The first round warms both up and isn't counted.
  for (let round = 0; round <= ROUNDS; round += 1) {
    const times = [await clocked(ours), await clocked(() => bare(drawing))] as const;
    if (round === 0) continue;
    printed.push(times[0]);
    drawn.push(times[1]);
  }
  const [printedMs, drawnMs] = [median(printed), median(drawn)];
  report(
    `${String(LABELS)} labels: laid out and printed ${printedMs.toFixed(0)} ms, bare pdfkit with ` +
      `the same glyphs ${drawnMs.toFixed(0)} ms, ratio ${(printedMs / drawnMs).toFixed(2)} ` +
      `(aim: ${String(AIM)})`,
  );
  expect(printed).toHaveLength(ROUNDS);
}, 600_000);
