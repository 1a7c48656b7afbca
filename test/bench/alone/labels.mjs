/* global performance */
// Prints labels with the compiled service's own code, in a plain process as the service is: inside
// the test runner every look at a global is slow, which says nothing about the service.
// Reads { labels, stock, head, rounds } from standard input, writes { printedMs, bareMs } of each round.
import { createRequire } from 'node:module';
import { json } from 'node:stream/consumers';

const require = createRequire(
  new URL('../../../apps/api/dist/documents/index.js', import.meta.url),
);
const PDFDocument = require('pdfkit');
const { fitLabel, printLabels } = require('./index.js');
const { FACES, fontFile, mmToPt } = require('./kit/fonts.js');

const input = await json(process.stdin);
const head = { ...input.head, createdAt: new Date(input.head.createdAt) };

const valueOf = (result) => {
  if (!result.ok) throw new Error(JSON.stringify(result.refusal));
  return result.value;
};

const clocked = async (work) => {
  const before = performance.now();
  await work();
  return performance.now() - before;
};

const ours = async () => valueOf(await printLabels(input.labels, input.stock, head));

const drawMark = (doc, mark) => {
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
};

/** The same glyphs and bars at the same places, straight through pdfkit, with nothing laid out. */
const bare = async (drawings) => {
  const doc = new PDFDocument({
    autoFirstPage: false,
    margin: 0,
    info: { CreationDate: head.createdAt },
  });
  for (const face of FACES) doc.registerFont(face, fontFile(face));
  doc.on('data', () => undefined);
  const ended = new Promise((resolve) => doc.on('end', resolve));
  for (const drawing of drawings) {
    doc.addPage({ size: [mmToPt(drawing.widthMm), mmToPt(drawing.heightMm)], margin: 0 });
    for (const mark of drawing.marks) drawMark(doc, mark);
  }
  doc.end();
  await ended;
};

const drawings = input.labels.map((label) => {
  return valueOf(fitLabel({ ...label, stock: input.stock })).drawing;
});
const rounds = [];
for (let round = 0; round < input.rounds; round += 1) {
  rounds.push({ printedMs: await clocked(ours), bareMs: await clocked(() => bare(drawings)) });
}
process.stdout.write(JSON.stringify(rounds));
