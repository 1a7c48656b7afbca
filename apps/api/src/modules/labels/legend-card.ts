import {
  paperLanguage,
  type CardSize,
  type LegendCardView,
  type PaperLanguage,
} from '../../documents';
import { counterPresence } from '../../domain/allergens';
import { labelSize, readStock } from '../../domain/printing';
import type { MarketRules } from '../../domain/market';
import type { LocalText } from '../../domain/specification';
import { allergenName } from '../../domain/words';
import type { Item } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { orRefuse } from '../../platform/problems';
import type { LotLabel } from './compose-for-lot';
import type { LabelsDto } from './label-runs.dto';
import { itemSettings } from './label-settings';
import { specificationsBehind } from './behind.queries';

interface Slot {
  /** Every lot of this kind that was packed: the card names the allergens of all. */
  readonly lotIds: readonly string[];
  readonly item: Pick<Item, 'name' | 'settings'>;
  /** Pieces of this kind in one box. */
  readonly count: number;
}

/** Pieces that were really packed, per box, kinds in the order of their first draw. */
const slotsOf = async (tx: Tx, batchId: string): Promise<Slot[]> => {
  const made = await tx.lot.aggregate({ where: { batchId }, _sum: { madeQuantity: true } });
  const boxes = Math.max(1, Number(made._sum.madeQuantity ?? 1));
  const draws = await tx.draw.findMany({
    where: { batchId, lot: { item: { kind: 'piece' } } },
    orderBy: [{ at: 'asc' }, { id: 'asc' }],
    include: { lot: { include: { item: true } } },
  });
  const kinds = new Map<string, { lotIds: string[]; item: Item; drawn: number }>();
  for (const draw of draws) {
    const { item } = draw.lot;
    const before = kinds.get(item.id);
    kinds.set(item.id, {
      lotIds: [...(before?.lotIds ?? []), draw.lotId],
      item,
      drawn: (before?.drawn ?? 0) + Number(draw.quantity),
    });
  }
  return [...kinds.values()]
    .filter((kind) => kind.drawn > 0)
    .map(({ drawn, ...kind }) => ({ ...kind, count: Math.max(1, Math.round(drawn / boxes)) }));
};

/** As near to a square as the number of pieces allows, wider than high. */
const grid = (pieces: number): { rows: number; columns: number } => {
  const columns = Math.max(1, Math.ceil(Math.sqrt(pieces)));
  return { columns, rows: Math.max(1, Math.ceil(pieces / columns)) };
};

const pieceOf = async (
  tx: Tx,
  slot: Slot,
  number: number,
  market: MarketRules,
  language: PaperLanguage,
): Promise<LegendCardView['pieces'][number]> => {
  const presence = counterPresence(
    await specificationsBehind(tx, [...new Set(slot.lotIds)]),
    market,
  );
  const named = (wanted: string): string[] =>
    market.allergens
      .filter((allergen) => presence[allergen] === wanted)
      .map((allergen) => allergenName(allergen, language));
  return {
    number,
    name: (itemSettings(slot.item).names as LocalText)[language] ?? slot.item.name,
    description: null,
    contains: named('contains'),
    mayContain: named('may_contain'),
    allergensUnknown: named('unknown').length > 0,
  };
};

export interface PlannedCard {
  readonly view: LegendCardView;
  readonly size: CardSize;
  readonly language: PaperLanguage;
}

/** A5 across. */
const USUAL_CARD: CardSize = { widthMm: 210, heightMm: 148 };

/** A card is cut to one size: a die-cut stock of it, or the usual card. */
const cardSize = (stock: LabelsDto['stock']): CardSize => {
  if (stock === undefined) return USUAL_CARD;
  const read = orRefuse(readStock(stock));
  const { widthMm, heightMm = USUAL_CARD.heightMm } = labelSize(read);
  return { widthMm, heightMm };
};

/** The card that lies in a box: its slots, its pieces and what they contain. */
export const legendCardOf = async (
  tx: Tx,
  label: LotLabel,
  dto: LabelsDto,
): Promise<PlannedCard> => {
  const { lot, workshop, ask } = label;
  const language = paperLanguage(ask.languages);
  const slots = lot.batchId ? await slotsOf(tx, lot.batchId) : [];
  const numbers = slots.flatMap((slot, index) => new Array<number>(slot.count).fill(index + 1));
  const { rows, columns } = grid(numbers.length);
  const pieces = [];
  for (const [index, slot] of slots.entries()) {
    pieces.push(await pieceOf(tx, slot, index + 1, ask.market, language));
  }
  const view: LegendCardView = {
    boxName: ask.settings.names[language] ?? lot.item.name,
    rows,
    columns,
    slots: numbers,
    pieces,
    lotMark: `L${lot.code}`,
    workshopName: workshop.name,
  };
  return { view, size: cardSize(dto.stock), language };
};
