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
import { allText, readPdf, type ReadPdf } from '../../support/papers/read-pdf';
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
    ['Hôtel des Marées', '261124-0094', '24 pcs', 'use by 20 Dec 2026', 'Caution: dates'],
    ['D-261125-00B2'],
  ],
  [
    'recall-list',
    (context) => recallList(sample.recallView, context),
    ['REHEARSAL', 'LV-8841', 'Épicerie du Pont', '186 pcs (2)', 'Page 1 of', 'Caution: this list'],
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

const read = async (name: string, make: Make, dpis: readonly number[] = []): Promise<ReadPdf> =>
  readPdf(await make(sampleContext), name, dpis);

describe.each(papers)('%s', (name, make, says, codes) => {
  it('says what it was given, in embedded fonts, with title and language', async () => {
    const paper = await read(name, make);
    const text = allText(paper);
    for (const words of says) expect(text).toContain(words);
    expect(paper.title).not.toBe('');
    expect(paper.language).toBe('en');
    const fonts = Object.values(paper.fonts);
    expect(fonts.length).toBeGreaterThan(0);
    expect(fonts.every(({ embedded }) => embedded)).toBe(true);
    for (const { name: font } of fonts) expect(font).toMatch(/NotoSans|DejaVu/);
  });

  it('has codes that a decoder reads at 203 and 300 dpi', async () => {
    if (codes.length === 0) return;
    const paper = await read(name, make, [203, 300]);
    for (const dpi of [203, 300]) {
      const decoded = paper.symbols.filter((symbol) => symbol.dpi === dpi).map(({ text }) => text);
      for (const code of codes) expect(decoded).toContain(code);
    }
  });

  it('is the same to the byte when it is printed again', async () => {
    const first = await make(sampleContext);
    await new Promise((resolve) => setTimeout(resolve, 1100));
    expect((await make(sampleContext)).equals(first)).toBe(true);
  });

  it('fits on US Letter and in French', async () => {
    const paper = readPdf(
      await make({ ...sampleContext, page: 'LETTER', language: 'fr' }),
      `${name}-letter`,
    );
    for (const page of paper.pages) {
      for (const item of page.items) {
        expect(item.xMm).toBeGreaterThan(0);
        expect(item.xMm + Math.min(item.widthMm, 5)).toBeLessThan(page.widthMm);
        expect(item.yMm).toBeLessThan(page.heightMm);
      }
    }
  });
});
