// Reads a PDF from stdin with a renderer and a decoder that know nothing of how it was written, and
// answers in JSON. A process of its own, because both are ES modules with WebAssembly.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';

const require = createRequire(import.meta.url);
const { dpis, images } = JSON.parse(process.argv[2]);
const input = new Uint8Array(readFileSync(0));

if (dpis.length > 0) {
  // Without this the package fetches its WebAssembly over the network.
  const file = require.resolve('zxing-wasm/reader/zxing_reader.wasm');
  await prepareZXingModule({
    overrides: { wasmBinary: readFileSync(file) },
    fireImmediately: true,
  });
}

const MM_PER_POINT = 25.4 / 72;
const document = await getDocument({ data: input, verbosity: 0, isEvalSupported: false }).promise;
const { info } = await document.getMetadata();
const answer = {
  title: info.Title,
  language: info.Language,
  pages: [],
  fonts: {},
  symbols: [],
  images: [],
};

const render = async (page, dpi) => {
  const viewport = page.getViewport({ scale: dpi / 72 });
  const { canvas, context } = document.canvasFactory.create(
    Math.ceil(viewport.width),
    Math.ceil(viewport.height),
  );
  await page.render({ canvasContext: context, viewport, background: 'white' }).promise;
  return { canvas, context };
};

const decode = async (context, canvas) => {
  const image = context.getImageData(0, 0, canvas.width, canvas.height);
  const found = await readBarcodes(image, { tryHarder: true, maxNumberOfSymbols: 60 });
  return found.map(({ format, text, symbologyIdentifier }) => ({
    format,
    text,
    symbologyIdentifier,
  }));
};

for (let number = 1; number <= document.numPages; number += 1) {
  const page = await document.getPage(number);
  const { items } = await page.getTextContent();
  await page.getOperatorList();
  for (const item of items) {
    if (!item.fontName || answer.fonts[item.fontName]) continue;
    const font = page.commonObjs.get(item.fontName);
    answer.fonts[item.fontName] = { name: font.name, embedded: !font.missingFile };
  }
  const [, , width, height] = page.view;
  answer.pages.push({
    widthMm: width * MM_PER_POINT,
    heightMm: height * MM_PER_POINT,
    text: items.map(({ str, hasEOL }) => str + (hasEOL ? '\n' : '')).join(''),
    items: items
      .filter(({ str }) => str.trim() !== '')
      .map(({ str, fontName, transform, width: itemWidth }) => ({
        text: str,
        font: answer.fonts[fontName]?.name,
        xMm: transform[4] * MM_PER_POINT,
        yMm: (height - transform[5]) * MM_PER_POINT,
        widthMm: itemWidth * MM_PER_POINT,
        sizePt: Math.hypot(transform[0], transform[1]),
        turned: Math.abs(transform[1]) > 0.01,
      })),
  });
  for (const dpi of dpis) {
    const { canvas, context } = await render(page, dpi);
    for (const symbol of await decode(context, canvas))
      answer.symbols.push({ dpi, page: number, ...symbol });
    if (images)
      answer.images.push({
        dpi,
        page: number,
        png: canvas.toBuffer('image/png').toString('base64'),
      });
  }
}
process.stdout.write(JSON.stringify(answer));
