import { dayText, moneyText } from '../kit/formats';
import type { Translated } from '../kit/language';
import type { PaperContext } from '../kit/paper-context';
import { Sheet } from '../kit/sheet';
import { caution, heading, titleBlock } from '../kit/sheet-parts';
import { table } from '../kit/table';
import { CAUTIONS } from './cautions.words';

export interface PriceListView {
  readonly kind: 'counter' | 'trade';
  /** `YYYY-MM-DD`. */
  readonly validFrom: string;
  readonly currency: string;
  readonly groups: readonly PriceGroup[];
}

export interface PriceGroup {
  readonly name: string;
  readonly rows: readonly PriceRow[];
}

export interface PriceRow {
  readonly name: string;
  /** As `125 g` or `12 pieces, 132 g`. */
  readonly content: string;
  /** What is paid: with VAT at the counter, without for trade. */
  readonly price: string;
  /** Per kg; null when no unit price is due. */
  readonly pricePerKg: string | null;
  /** As `20` or `5.5`. */
  readonly vatPercent: string;
}

interface PriceListWords {
  readonly titles: Readonly<Record<PriceListView['kind'], string>>;
  readonly from: (day: string) => string;
  readonly what: string;
  readonly content: string;
  readonly prices: Readonly<Record<PriceListView['kind'], string>>;
  readonly perKg: string;
  readonly vat: string;
}

const WORDS: Translated<PriceListWords> = {
  en: {
    titles: { counter: 'Price list', trade: 'Trade price list' },
    from: (day) => `from ${day}`,
    what: 'What',
    content: 'Content',
    prices: { counter: 'Price, VAT in', trade: 'Price, VAT out' },
    perKg: 'Per kg',
    vat: 'VAT %',
  },
  fr: {
    titles: { counter: 'Tarif', trade: 'Tarif professionnel' },
    from: (day) => `à partir du ${day}`,
    what: 'Quoi',
    content: 'Contenu',
    prices: { counter: 'Prix TTC', trade: 'Prix HT' },
    perKg: 'Le kg',
    vat: 'TVA %',
  },
};

export const priceList = (view: PriceListView, context: PaperContext): Promise<Buffer> => {
  const { language } = context;
  const words = WORDS[language];
  const sheet = new Sheet(context, words.titles[view.kind]);
  titleBlock(sheet, words.titles[view.kind], words.from(dayText(view.validFrom, language)));
  const money = (amount: string): string => moneyText(amount, view.currency, language);
  for (const { name, rows } of view.groups) {
    heading(sheet, name);
    table(sheet, {
      columns: [
        { title: words.what, share: 38 },
        { title: words.content, share: 24 },
        { title: words.prices[view.kind], share: 16, align: 'right' },
        { title: words.perKg, share: 16, align: 'right' },
        { title: words.vat, share: 9, align: 'right' },
      ],
      rows: rows.map((row) => ({
        cells: [
          row.name,
          row.content,
          [{ text: money(row.price), strong: true }],
          row.pricePerKg === null ? '' : money(row.pricePerKg),
          row.vatPercent,
        ],
      })),
      sizePt: 9,
    });
  }
  caution(sheet, CAUTIONS[language].prices);
  return sheet.finish();
};
