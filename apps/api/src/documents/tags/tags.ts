import {
  checkStock,
  labelSize,
  type LabelStock,
  type PrintingRefusal,
} from '../../domain/printing';
import { ok, type Result } from '../../domain/refusals';
import { dayText, labelled, quantityText } from '../kit/formats';
import type { PdfHead } from '../kit/pdf';
import type { PaperLanguage, Translated } from '../kit/language';
import { printOnStock, type Prints } from '../kit/print-on-stock';
import { layTag, type Tag } from './tag';
import { inLanguage } from '../../domain/words/in-language';

/** What a lot's tag says. */
export interface LotTagView {
  readonly code: string;
  readonly itemName: string;
  readonly quantity: string;
  readonly unit: 'g' | 'pc';
  /** `YYYY-MM-DD`. */
  readonly date: string | null;
  readonly dateKind: 'best_before' | 'use_by';
  readonly madeOn: string;
  readonly received: boolean;
  readonly supplierName: string | null;
  readonly supplierLotCode: string | null;
  readonly placeName: string | null;
  readonly storageConditions: string | null;
  /** Names of allergens, and whether any is unknown. */
  readonly allergenNames: readonly string[];
  readonly allergensUnknown: boolean;
  readonly holdReason: string | null;
  readonly copies: number;
}

/** A mould, tank or place. */
export interface ThingTagView {
  readonly code: string;
  readonly name: string;
  readonly lines: readonly string[];
}

interface TagWords {
  readonly best_before: string;
  readonly use_by: string;
  readonly made: string;
  readonly received: string;
  readonly lot: string;
  readonly contains: string;
  readonly unknown: string;
  readonly hold: string;
  readonly title: string;
}

const WORDS: Translated<TagWords> = {
  en: {
    best_before: 'Best before',
    use_by: 'USE BY',
    made: 'made',
    received: 'received',
    lot: 'supplier’s lot',
    contains: 'Contains',
    unknown: 'ALLERGENS UNKNOWN',
    hold: 'ON HOLD',
    title: 'Tags',
  },
  fr: {
    best_before: 'De préférence avant',
    use_by: 'À CONSOMMER JUSQU’AU',
    made: 'fait',
    received: 'reçu',
    lot: 'lot fournisseur',
    contains: 'Contient',
    unknown: 'ALLERGÈNES INCONNUS',
    hold: 'BLOQUÉ',
    title: 'Étiquettes',
  },
};

const lotTag = (view: LotTagView, language: PaperLanguage): Tag => {
  const words = WORDS[language];
  const origin = `${view.received ? words.received : words.made} ${dayText(view.madeOn, language)}`;
  const allergens =
    view.allergenNames.length === 0
      ? []
      : [labelled(words.contains, view.allergenNames.join(', '), language)];
  const warnings = [
    ...(view.holdReason === null
      ? []
      : [labelled(words.hold, inLanguage(view.holdReason, language), language)]),
    ...(view.allergensUnknown ? [words.unknown] : []),
  ];
  return {
    code: view.code,
    name: view.itemName,
    strong: view.date === null ? null : `${words[view.dateKind]} ${dayText(view.date, language)}`,
    lines: [
      ...allergens,
      `${quantityText(view.quantity, view.unit, language)}, ${origin}`,
      ...(view.supplierLotCode === null ? [] : [`${words.lot} ${view.supplierLotCode}`]),
      ...[view.storageConditions, view.placeName, view.supplierName].filter(
        (line) => line !== null,
      ),
    ],
    warning: warnings.length === 0 ? null : warnings.join(' · '),
  };
};

type Printed = Promise<Result<Buffer, PrintingRefusal>>;

const printTags = async (
  tags: readonly (Tag & { readonly copies: number })[],
  stock: LabelStock,
  head: PdfHead,
): Printed => {
  const checked = checkStock(stock);
  if (!checked.ok) return checked;
  const prints: Prints[] = [];
  for (const tag of tags) {
    const drawing = layTag(tag, { ...labelSize(stock), marginMm: stock.marginMm });
    if (!drawing.ok) return drawing;
    prints.push({ drawing: drawing.value, copies: tag.copies });
  }
  return ok(await printOnStock(prints, stock, head));
};

/** Tags of lots, as many copies of each as it says. */
export const lotTags = (
  views: readonly LotTagView[],
  stock: LabelStock,
  head: PdfHead & { readonly language: PaperLanguage },
): Printed =>
  printTags(
    views.map((view) => ({ ...lotTag(view, head.language), copies: view.copies })),
    stock,
    head,
  );

/** Tags of moulds, tanks and places: one each. */
export const thingTags = (
  views: readonly ThingTagView[],
  stock: LabelStock,
  head: PdfHead,
): Printed =>
  printTags(
    views.map((view) => ({ ...view, strong: null, warning: null, copies: 1 })),
    stock,
    head,
  );
