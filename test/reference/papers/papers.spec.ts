import {
  allergenMatrix,
  batchSheet,
  deliveryNote,
  diary,
  legendCard,
  lotTags,
  priceList,
  recallLetters,
  recallList,
  recallNotice,
  thingTags,
  traceReport,
  type PaperContext,
} from '@api/documents';
import type { LabelStock } from '@api/domain/printing';
import { allText, readPdf } from '../../support/papers/read-pdf';
import { sampleContext } from '../../support/papers/sample-context';
import * as sample from '../../support/papers/sample-views';

const dieCut: LabelStock = { kind: 'die_cut', widthMm: 70, heightMm: 45, marginMm: 2 };
const head = {
  title: 'Tags',
  language: 'en' as const,
  author: sampleContext.workshop.name,
  createdAt: sampleContext.createdAt,
};

const must = async (
  printed: Promise<{ ok: true; value: Buffer } | { ok: false; refusal: { detail: string } }>,
): Promise<Buffer> => {
  const result = await printed;
  if (!result.ok) throw new Error(result.refusal.detail);
  return result.value;
};

type Make = (context: PaperContext) => Promise<Buffer>;

const papers: readonly (readonly [
  name: string,
  make: Make,
  says: readonly string[],
  codes: readonly string[],
])[] = [
  [
    'batch-sheet',
    (context) => batchSheet(sample.batchSheetView, context),
    ['Ganache, salted butter caramel', '1,450 g', '261103-0047', '≤ 5.6', 'Page 1 of'],
    ['B-261125-00Q4', '261125-001K', '261103-0047', '261012-0031', '261120-002M'],
  ],
  [
    'delivery-note',
    (context) => deliveryNote(sample.deliveryNoteView, context),
    ['Hôtel des Marées', '261124-0094', '24 pcs', 'use by 20 Dec 2026', 'Caution: Dates'],
    ['D-261125-00B2'],
  ],
  [
    'recall-list',
    (context) => recallList(sample.recallView, context),
    ['REHEARSAL', 'LV-8841', 'Épicerie du Pont', '186 pcs (2)', 'Page 1 of', 'Caution: This list'],
    ['R-261125-0012'],
  ],
  [
    'recall-notice',
    (context) => recallNotice(sample.recallNoticeView, context),
    ['Product recall', 'L261124-0094', 'Don’t eat these chocolates', '+00 1 23 45 67'],
    [],
  ],
  [
    'recall-letters',
    (context) => recallLetters(sample.recallView, context),
    ['Hôtel des Marées', 'Épicerie du Pont', 'stop selling', 'Page 2 of 2'],
    [],
  ],
  [
    'trace-report',
    (context) => traceReport(sample.traceView, context),
    [
      'Whipping cream',
      'Laiterie du Vallon, LV-8841',
      'over the counter',
      '512.25',
      'Mass balance',
      'Sent to customers',
      'Lost: scrapings',
      '66.21',
    ],
    ['261125-001K'],
  ],
  [
    'diary',
    (context) => diary(sample.diaryView, context),
    ['24 Nov 2026', '7.9 °C', 'mould check', 'Maud'],
    [],
  ],
  [
    'price-list',
    (context) => priceList(sample.priceListView, context),
    ['17.90 EUR', '135.61 EUR', 'from 1 Dec 2026'],
    [],
  ],
  [
    'allergen-matrix',
    (context) => allergenMatrix(sample.allergenMatrixView, context),
    ['Raspberry heart', 'macadamia nut', 'Unknown is not absent', '●'],
    [],
  ],
  [
    'legend-card',
    (context) =>
      must(
        legendCard(
          sample.legendCardView,
          { widthMm: 148, heightMm: 105 },
          {
            ...head,
            title: 'Legend card',
            language: context.language,
            createdAt: context.createdAt,
          },
        ),
      ),
    ['Harbour assortment', 'hazelnut, wheat, milk', 'L261124-0094'],
    [],
  ],
  [
    'lot-tag',
    (context) =>
      must(
        lotTags(
          [
            sample.lotTagView,
            {
              ...sample.lotTagView,
              code: '261125-002X',
              holdReason: 'no approved specification',
              allergensUnknown: true,
            },
          ],
          dieCut,
          { ...head, language: context.language, createdAt: context.createdAt },
        ),
      ),
    [
      'USE BY 5 Dec 2026',
      'Contains: milk',
      'ON HOLD: no approved specification',
      'ALLERGENS UNKNOWN',
    ],
    ['261125-001K', '261125-002X'],
  ],
  [
    'mould-tags',
    (context) =>
      must(
        thingTags(
          ['M-001G', 'M-0023', 'T-0034'].map((code) => ({
            code,
            name: 'Half sphere 28 mm',
            lines: ['3 × 8 cavities'],
          })),
          {
            kind: 'sheet',
            page: 'A4',
            columns: 3,
            rows: 7,
            labelWidthMm: 63.5,
            labelHeightMm: 38.1,
            leftMm: 7.2,
            topMm: 15.1,
            pitchXMm: 66,
            pitchYMm: 38.1,
            marginMm: 3,
            startAt: 2,
          },
          { ...head, createdAt: context.createdAt },
        ),
      ),
    ['Half sphere 28 mm', 'M-0023'],
    ['M-001G', 'M-0023', 'T-0034'],
  ],
];

describe.each(papers)('%s', (name, make, says, codes) => {
  it('says what it was given in embedded fonts, and its codes scan back', async () => {
    const dpis = codes.length === 0 ? [] : [203, 300];
    const paper = readPdf(await make(sampleContext), name, dpis);
    const text = allText(paper);
    for (const words of says) expect(text).toContain(words);
    expect(paper.title).not.toBe('');
    expect(paper.language).toBe('en');
    const fonts = Object.values(paper.fonts);
    expect(fonts.length).toBeGreaterThan(0);
    expect(fonts.every(({ embedded }) => embedded)).toBe(true);
    for (const { name: font } of fonts) expect(font).toMatch(/NotoSans|DejaVu/);
    for (const dpi of dpis) {
      const decoded = paper.symbols.filter((symbol) => symbol.dpi === dpi).map((read) => read.text);
      expect(decoded).toEqual(expect.arrayContaining([...codes]));
    }
  });

  it('stays within US Letter in French', async () => {
    const context = { ...sampleContext, page: 'LETTER', language: 'fr' } as const;
    const paper = readPdf(await make(context), `${name}-letter`);
    expect(paper.language).toBe(name === 'mould-tags' ? 'en' : 'fr');
    for (const page of paper.pages) {
      for (const { xMm, yMm, widthMm, turned } of page.items) {
        expect(xMm).toBeGreaterThan(0);
        expect(turned ? xMm : xMm + widthMm).toBeLessThan(page.widthMm);
        expect(turned ? yMm - widthMm : yMm).toBeGreaterThan(0);
        expect(yMm).toBeLessThan(page.heightMm);
      }
    }
  });
});

describe('every paper', () => {
  it('is the same to the byte when it is printed again at another time', async () => {
    const printAll = async (): Promise<Buffer[]> => {
      const printed: Buffer[] = [];
      for (const [, make] of papers) printed.push(await make(sampleContext));
      return printed;
    };
    const first = await printAll();
    // Long enough for a clock of whole seconds to go on.
    await new Promise((resolve) => setTimeout(resolve, 1100));
    const second = await printAll();
    expect(second.map((bytes, index) => bytes.equals(first[index] ?? Buffer.alloc(0)))).toEqual(
      papers.map(() => true),
    );
  });
});
