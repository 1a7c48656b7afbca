import { Temporal } from 'temporal-polyfill';
import {
  legendCard,
  printLabels,
  type CardSize,
  type LabelSymbol,
  type LegendCardView,
  type PaperLanguage,
} from '../../documents';
import { acceptances, blocking, type Acceptances, type LabelContent } from '../../domain/label';
import { readStock, type LabelStock } from '../../domain/printing';
import type { Tx } from '../../platform/database/prisma';
import { goOn } from '../../platform/long-work/long-work';
import { orRefuse, RefusalError } from '../../platform/problems';
import { composeForLot, type LotLabel } from './compose-for-lot';
import { findingView } from './declarations.view';
import { workshopSettings } from './label-settings';
import type { AcceptedDto, LabelsDto } from './label-runs.dto';
import { legendCardOf } from './legend-card';
import { priceMark } from './price-mark';
import { labelSymbols } from './symbols';
import { sentences } from '../../domain/words/say';

interface Head {
  readonly title: string;
  readonly author: string;
  /** The workshop's day. The file names no minute, so a preview of today prints to the byte. */
  readonly day: string;
}

/** What goes on the paper, decided and worded, before anything is drawn. Plain data throughout. */
export type LabelPaper =
  | {
      readonly kind: 'labels';
      readonly head: Head & { readonly language: string };
      readonly content: LabelContent;
      readonly symbols: readonly LabelSymbol[];
      readonly stock: LabelStock;
      readonly copies: number;
    }
  | {
      readonly kind: 'legend_card';
      readonly head: Head & { readonly language: PaperLanguage };
      readonly view: LegendCardView;
      readonly size: CardSize;
    };

export interface PlannedPaper {
  readonly label: LotLabel;
  readonly paper: LabelPaper;
}

/** Until the workshop has said what it prints on: a roll that holds a long list. */
const USUAL_STOCK: LabelStock = { kind: 'roll', widthMm: 100, marginMm: 3 };

/** Prepacked for direct sale asks for the name and the list of ingredients, nothing more. */
const DIRECT_SALE_BLOCKS = ['name', 'ingredients', 'contains', 'precaution'];

const directSale = (content: LabelContent): LabelContent => ({
  ...content,
  blocks: content.blocks.filter((block) => DIRECT_SALE_BLOCKS.includes(block.kind)),
  quantity: null,
  nutrition: [],
});

export const decisionOf = ({ code, subject }: AcceptedDto) => ({ code, subject: subject ?? null });

const keptBack = (label: LotLabel, accepted: Acceptances): RefusalError => {
  const open = blocking(label.findings, accepted);
  const detail = sentences(open.map((finding) => finding.detail));
  const facts = { lotCode: label.lot.code, findings: open.map(findingView) };
  return new RefusalError({ code: 'label-kept-back', detail, facts });
};

const labelsOf = (
  label: LotLabel,
  composed: LabelContent,
  dto: LabelsDto,
  day: string,
): LabelPaper => {
  const content = dto.form === 'direct_sale_label' ? directSale(composed) : composed;
  const wanted = dto.stock ?? workshopSettings(label.workshop).stock;
  return {
    kind: 'labels',
    head: {
      title: `${label.lot.item.name} ${content.lotMark}`,
      author: label.workshop.name,
      day,
      language: content.languages[0] ?? 'en',
    },
    content,
    symbols: labelSymbols(label.settings.symbol, label.lot.item.gtin, content),
    stock: wanted ? orRefuse(readStock(wanted)) : USUAL_STOCK,
    copies: dto.copies,
  };
};

/** Reads and composes what a run would print. @throws RefusalError when something keeps it back */
export const planPaper = async (
  tx: Tx,
  lotCode: string,
  today: Temporal.PlainDate,
  dto: LabelsDto,
): Promise<PlannedPaper> => {
  const accepted = acceptances((dto.accepted ?? []).map(decisionOf));
  const label = await composeForLot(tx, lotCode, today, {
    market: dto.market,
    languages: dto.languages,
    price: await priceMark(tx, lotCode, dto.price),
    accepted,
  });
  if (!label.content) throw keptBack(label, accepted);
  const day = today.toString();
  if (dto.form !== 'legend_card') {
    return { label, paper: labelsOf(label, label.content, dto, day) };
  }
  const { view, size, language } = await legendCardOf(tx, label, dto);
  const head = { title: view.boxName, author: label.workshop.name, day, language };
  return { label, paper: { kind: 'legend_card', head, view, size } };
};

export interface DrawnPaper {
  readonly pdf: Buffer;
  /** For the record of the run: all that was printed, and how large. */
  readonly content: object;
}

const midnight = (day: string): Date =>
  new Date(Temporal.PlainDate.from(day).toZonedDateTime('UTC').epochMilliseconds);

/** Draws what was planned: slow, and without the database. The same paper gives the same bytes. */
export const drawPaper = async (paper: LabelPaper): Promise<DrawnPaper> => {
  const head = { ...paper.head, createdAt: midnight(paper.head.day) };
  if (paper.kind === 'legend_card') {
    const pdf = orRefuse(
      await legendCard(paper.view, paper.size, { ...head, language: paper.head.language }),
    );
    return { pdf, content: paper.view };
  }
  const { content, symbols, stock, copies } = paper;
  const printed = orRefuse(await printLabels([{ content, symbols, copies }], stock, head, goOn));
  return {
    pdf: printed.pdf,
    content: { content, stock, symbols, xHeightMm: printed.xHeightsMm[0] },
  };
};

/** Whether two plans would print the same. */
export const printsTheSame = (one: LabelPaper, other: LabelPaper): boolean =>
  JSON.stringify(one) === JSON.stringify(other);
