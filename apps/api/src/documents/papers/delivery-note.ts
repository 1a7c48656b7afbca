import { dayText, numberText, quantityText } from '../kit/formats';
import type { Translated } from '../kit/language';
import type { PaperContext } from '../kit/paper-context';
import { Sheet } from '../kit/sheet';
import { caution, facts, linesToWrite, smallPrint, titleBlock } from '../kit/sheet-parts';
import { table } from '../kit/table';
import { CAUTIONS } from './cautions.words';

export interface DeliveryNoteView {
  readonly code: string;
  /** `YYYY-MM-DD`. */
  readonly sentOn: string;
  readonly customer: { readonly name: string; readonly addressLines: readonly string[] };
  readonly lines: readonly DeliveryNoteLine[];
  readonly note: string | null;
}

export interface DeliveryNoteLine {
  readonly itemName: string;
  readonly lotCode: string;
  readonly quantity: string;
  readonly unit: 'g' | 'pc';
  readonly massG: string;
  readonly date: string | null;
  readonly dateKind: 'best_before' | 'use_by';
  readonly storageConditions: string | null;
}

interface DeliveryNoteWords {
  readonly title: string;
  readonly to: string;
  readonly from: string;
  readonly sent: string;
  readonly note: string;
  readonly what: string;
  readonly lot: string;
  readonly quantity: string;
  readonly mass: string;
  readonly date: string;
  readonly best_before: string;
  readonly use_by: string;
  readonly keepLots: string;
  readonly received: string;
  readonly temperature: string;
}

const WORDS: Translated<DeliveryNoteWords> = {
  en: {
    title: 'Delivery note',
    to: 'To',
    from: 'From',
    sent: 'Sent',
    note: 'Note',
    what: 'What',
    lot: 'Lot',
    quantity: 'Quantity',
    mass: 'Net, g',
    date: 'Date',
    best_before: 'best before',
    use_by: 'use by',
    keepLots: 'Keep the lot codes with the goods: a recall is answered by them.',
    received: 'Received by, when',
    temperature: 'Temperature on arrival',
  },
  fr: {
    title: 'Bon de livraison',
    to: 'À',
    from: 'De',
    sent: 'Envoyé',
    note: 'Remarque',
    what: 'Quoi',
    lot: 'Lot',
    quantity: 'Quantité',
    mass: 'Net, g',
    date: 'Date',
    best_before: 'de préférence avant',
    use_by: 'à consommer jusqu’au',
    keepLots: 'Garder les numéros de lot avec la marchandise : un rappel s’y réfère.',
    received: 'Reçu par, quand',
    temperature: 'Température à la réception',
  },
};

/** What was sent to a customer, lot by lot. */
export const deliveryNote = (view: DeliveryNoteView, context: PaperContext): Promise<Buffer> => {
  const { language, workshop } = context;
  const words = WORDS[language];
  const sheet = new Sheet(context, `${words.title} ${view.code}`);
  titleBlock(sheet, words.title, view.code, { kind: 'qrcode', text: view.code });
  const contact = [workshop.phone, workshop.email].filter((line) => line !== null);
  facts(sheet, [
    [
      words.to,
      [
        { text: view.customer.name, strong: true },
        { text: ['', ...view.customer.addressLines].join('\n') },
      ],
    ],
    [words.from, [workshop.name, ...workshop.addressLines, ...contact].join('\n')],
    [words.sent, dayText(view.sentOn, language)],
    ...(view.note === null ? [] : [[words.note, view.note] as const]),
  ]);
  table(sheet, {
    columns: [
      { title: words.what, share: 34 },
      { title: words.lot, share: 20 },
      { title: words.quantity, share: 14, align: 'right' },
      { title: words.mass, share: 12, align: 'right' },
      { title: words.date, share: 24 },
    ],
    rows: view.lines.map((line) => ({
      cells: [
        [
          { text: line.itemName },
          { text: line.storageConditions === null ? '' : `\n${line.storageConditions}` },
        ],
        [{ text: line.lotCode, strong: true }],
        quantityText(line.quantity, line.unit, language),
        numberText(line.massG, language),
        line.date === null ? '' : `${words[line.dateKind]} ${dayText(line.date, language)}`,
      ],
    })),
  });
  smallPrint(sheet, words.keepLots);
  caution(sheet, CAUTIONS[language].dates);
  linesToWrite(sheet, [words.received, words.temperature]);
  return sheet.finish();
};
