import { fitLabel, printLabels, type LabelRequest } from '@api/documents';
import {
  GROUP_SEPARATOR,
  withCheckDigit,
  writeDigitalLink,
  writeElements,
} from '@api/domain/identification';
import type { LabelStock } from '@api/domain/printing';
import { inEnglish } from '@api/domain/words/say';
import { readPdf, allText, type ReadItem } from '../../support/papers/read-pdf';
import { sampleLabel } from '../../support/papers/sample-label';
import { sampleContext } from '../../support/papers/sample-context';

const MM_PER_POINT = 25.4 / 72;
const head = {
  title: 'Box labels',
  language: 'en',
  author: sampleContext.workshop.name,
  createdAt: sampleContext.createdAt,
};

const gtin = withCheckDigit('0950123400001');

const elements = [
  { ai: '01', value: gtin },
  { ai: '15', value: '270105' },
  { ai: '10', value: sampleLabel.lotCode },
];

const must = <T>(
  result: { ok: true; value: T } | { ok: false; refusal: { detail: string } },
): T => {
  if (!result.ok) throw new Error(result.refusal.detail);
  return result.value;
};

const written = must(writeElements(elements));
const dataMatrix = { kind: 'gs1datamatrix', text: written.bracketed, caption: null } as const;
const link = { kind: 'qrcode', text: must(writeDigitalLink(elements)), caption: null } as const;
const ownCode = { kind: 'qrcode', text: sampleLabel.lotCode, caption: null } as const;
const ean13 = { kind: 'ean13', text: '4006381333931', caption: '4 006381 333931' } as const;
const linear = { kind: 'gs1-128', text: `(01)${gtin}(10)AB-1`, caption: null } as const;

const roll: LabelStock = { kind: 'roll', widthMm: 62, marginMm: 3 };
const dieCut: LabelStock = { kind: 'die_cut', widthMm: 100, heightMm: 100, marginMm: 3 };
const a4: LabelStock = {
  kind: 'sheet',
  page: 'A4',
  columns: 2,
  rows: 2,
  labelWidthMm: 99,
  labelHeightMm: 139,
  leftMm: 6,
  topMm: 9,
  pitchXMm: 99,
  pitchYMm: 139,
  marginMm: 3,
  startAt: 2,
};
const letter: LabelStock = {
  ...a4,
  page: 'LETTER',
  labelHeightMm: 127,
  pitchYMm: 127,
  topMm: 12,
  startAt: 1,
};

const print = async (
  stock: LabelStock,
  symbols: LabelRequest['symbols'],
  copies = 1,
  content = sampleLabel,
): Promise<Buffer> => must(await printLabels([{ content, symbols, copies }], stock, head)).pdf;

describe('box label', () => {
  it.each([
    ['roll', roll, [ownCode]],
    ['die-cut', dieCut, [dataMatrix]],
    ['a4', a4, [link]],
    ['letter', letter, [dataMatrix, ean13]],
  ] as const)('carries all its words and its codes on %s stock', async (name, stock, symbols) => {
    const paper = readPdf(await print(stock, symbols, 3), `label-${name}`, [203, 300]);
    const text = allText(paper).replaceAll(/\s+/g, '');
    for (const block of sampleLabel.blocks) {
      const words = block.runs
        .map((run) => run.text)
        .join('')
        .replaceAll(/\s+/g, '');
      expect(text).toContain(words);
    }
    for (const words of [
      '132g',
      '℮',
      '05/01/2027',
      'L261124-0094',
      '2267kJ/543kcal',
      'ofwhichsugars',
    ]) {
      expect(text).toContain(words);
    }
    expect(Object.values(paper.fonts).every(({ embedded }) => embedded)).toBe(true);
    for (const dpi of [203, 300]) {
      const read = paper.symbols.filter((symbol) => symbol.dpi === dpi);
      expect(read).toHaveLength(3 * symbols.length);
    }
  });

  it('begins on the free label of a sheet that was begun', async () => {
    const paper = readPdf(await print(a4, [], 6), 'label-start');
    expect(paper.pages).toHaveLength(2);
    const lots = paper.pages.flatMap(({ items }) =>
      items.filter(({ text }) => text === 'L261124-0094'),
    );
    expect(lots.map(({ xMm }) => (xMm > 105 ? 'right' : 'left'))).toEqual([
      ...['right', 'left', 'right'],
      ...['left', 'right', 'left'],
    ]);
  });

  // Source of the identifiers: ISO/IEC 15424; ]d2 is GS1 DataMatrix, ]C1 GS1-128, ]Q1 QR, ]E0 EAN-13.
  it.each([
    [dataMatrix, ']d2', written.message],
    [link, ']Q1', link.text],
    [ownCode, ']Q1', sampleLabel.lotCode],
    [ean13, ']E0', ean13.text],
    [linear, ']C1', `01${gtin}10AB-1`],
  ])(
    'prints $0.kind so that a decoder gives it back at 203 and 300 dpi',
    async (symbol, identifier, text) => {
      const paper = readPdf(
        await print({ ...dieCut, widthMm: 110, heightMm: 140 }, [symbol]),
        `code-${symbol.kind}`,
        [203, 300],
      );
      expect(paper.symbols.map(({ dpi }) => dpi)).toEqual([203, 300]);
      for (const read of paper.symbols) {
        expect(read.symbologyIdentifier).toBe(identifier);
        const plain = read.text.replaceAll(/<GS>/g, GROUP_SEPARATOR).replaceAll(/[()]/g, '');
        expect(plain).toBe(text.replaceAll(/[()]/g, ''));
      }
    },
  );

  it('is the same to the byte when the run is printed again', async () => {
    expect(
      (await print(dieCut, [dataMatrix], 4)).equals(await print(dieCut, [dataMatrix], 4)),
    ).toBe(true);
  });
});

describe('type size', () => {
  /** Noto Sans Regular has its x at 536 of 1000 units, Bold at 546 (measured on the glyph). */
  const X_HEIGHT = 0.536;

  // Source: Regulation (EU) No 1169/2011, Art 13(2)-(3) and Annex IV.
  it.each([1.2, 0.9])('is at least %d mm for every lower-case x', async (minXHeightMm) => {
    const content = { ...sampleLabel, minXHeightMm };
    const paper = readPdf(await print(roll, [ownCode], 1, content), 'label-type');
    for (const { sizePt } of paper.pages.flatMap(({ items }) => items)) {
      expect(sizePt * X_HEIGHT * MM_PER_POINT).toBeGreaterThanOrEqual(minXHeightMm);
    }
    const body = paper.pages[0]?.items.find(({ text }) => text.startsWith('Ingredients'));
    expect((body?.sizePt ?? 0) * X_HEIGHT * MM_PER_POINT).toBeLessThan(minXHeightMm + 0.01);
  });

  // Source: Directive 76/211/EEC, Annex I 3.1: 6, 4, 3 and 2 mm; the sign e at least 3 mm.
  it.each([2, 3, 4, 6])(
    'gives the quantity figures of %d mm and the sign e of 3',
    async (minDigitHeightMm) => {
      const quantity = { text: '132 g', minDigitHeightMm, eMark: true, minEMarkHeightMm: 3 };
      const paper = readPdf(await print(roll, [], 1, { ...sampleLabel, quantity }), 'label-digits');
      const find = (wanted: string): ReadItem | undefined =>
        paper.pages[0]?.items.find(({ text }) => text.startsWith(wanted));
      // Figures of Noto Sans Bold are 714 of 1000 units high, ℮ is 552.
      expect((find('132')?.sizePt ?? 0) * 0.714 * MM_PER_POINT).toBeGreaterThanOrEqual(
        minDigitHeightMm,
      );
      expect((find('℮')?.sizePt ?? 0) * 0.552 * MM_PER_POINT).toBeGreaterThanOrEqual(3);
    },
  );

  it('grows into the room of a label with a fixed height, and never past its edge', () => {
    const fitted = must(
      fitLabel({ content: sampleLabel, symbols: [], stock: { ...dieCut, heightMm: 140 } }),
    );
    expect(fitted.xHeightMm).toBeGreaterThan(sampleLabel.minXHeightMm);
    for (const mark of fitted.drawing.marks) expect(mark.yMm).toBeLessThanOrEqual(140);
  });

  it('sets allergens in bold and the rest of the list not', async () => {
    const paper = readPdf(await print(roll, []), 'label-bold');
    const items = paper.pages[0]?.items ?? [];
    const bold = items
      .filter(({ font }) => font.includes('Bold'))
      .map(({ text }) => text)
      .join(' ');
    for (const name of ['soy', 'milk', 'hazelnuts', 'wheat', 'lait', 'noisettes', 'blé', 'œuf']) {
      expect(bold).toContain(name);
    }
    expect(bold).not.toContain('glucose');
  });
});

describe('a label that does not fit', () => {
  const refusal = (request: LabelRequest): { code: string; detail: string; facts?: object } => {
    const result = fitLabel(request);
    if (result.ok) throw new Error('It fits.');
    return result.refusal;
  };
  const name = (text: string): typeof sampleLabel => ({
    ...sampleLabel,
    blocks: [
      { kind: 'name', language: 'en', runs: [{ text, emphasis: 'none' }] },
      ...sampleLabel.blocks.slice(1),
    ],
  });

  it('says what is missing and what would fit, and that does fit', () => {
    const stock = { kind: 'die_cut', widthMm: 50, heightMm: 60, marginMm: 2 } as const;
    const said = refusal({ content: sampleLabel, symbols: [ownCode], stock });
    expect(said.code).toBe('label-does-not-fit');
    const { neededHeightMm, neededWidthMm } = said.facts as {
      neededHeightMm: number;
      neededWidthMm: number;
    };
    expect(inEnglish(said.detail)).toContain(`a label of 50 × ${neededHeightMm} mm`);
    for (const better of [
      { ...stock, heightMm: neededHeightMm },
      { ...stock, widthMm: neededWidthMm },
    ]) {
      expect(fitLabel({ content: sampleLabel, symbols: [ownCode], stock: better }).ok).toBe(true);
    }
    expect(
      fitLabel({
        content: sampleLabel,
        symbols: [ownCode],
        stock: { ...stock, heightMm: neededHeightMm - 1 },
      }).ok,
    ).toBe(false);
  });

  it.each([
    ['a name of 500 characters', name('Bonbon '.repeat(72)), 'label-does-not-fit'],
    ['a word of 500 letters', name('B'.repeat(500)), 'label-does-not-fit'],
    ['right-to-left text', name('שוקולד'), 'text-not-printable'],
    ['Arabic', name('شوكولاتة'), 'text-not-printable'],
    ['a sign that no font has', name('巧克力'), 'text-not-printable'],
    ['a turning mark that nobody sees', name('choc\u202Eolate'), 'text-not-printable'],
  ])('is refused with a reason for %s', (_, content, code) => {
    const stock = { kind: 'die_cut', widthMm: 90, heightMm: 90, marginMm: 2 } as const;
    const said = refusal({ content, symbols: [], stock });
    expect(said.code).toBe(code);
    expect(said.detail.length).toBeGreaterThan(30);
  });

  it.each([
    [{ ...dieCut, widthMm: 5 }],
    [{ ...dieCut, marginMm: 40 }],
    [{ ...dieCut, marginMm: -1 }],
    [{ ...a4, columns: 3 }],
    [{ ...a4, startAt: 5 }],
    [{ ...a4, startAt: 0 }],
    [{ ...a4, pitchXMm: 50 }],
    [{ ...a4, rows: 2.5 }],
    [{ ...dieCut, widthMm: Number.NaN }],
  ] as [LabelStock][])('is refused on a stock that cannot be: %j', (stock) => {
    expect(refusal({ content: sampleLabel, symbols: [], stock }).code).toBe('stock-not-valid');
  });
});
