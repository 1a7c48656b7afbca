import {
  legendCard,
  paperLanguage,
  type LegendCardView,
  type PaperLanguage,
} from '../../documents';
import { counterPresence } from '../../domain/allergens';
import type { MarketRules } from '../../domain/market';
import { allergenName } from '../../domain/words';
import type { Tx } from '../../platform/database/prisma';
import type { By } from '../../platform/database/transactions';
import { orRefuse } from '../../platform/problems';
import type { LotLabel } from './compose-for-lot';
import type { PrintLabelsDto } from './labels.dto';
import { specificationsBehind } from './behind.queries';

interface Slot {
  readonly lotId: string;
  readonly itemName: string;
  /** Pieces of this lot in one box. */
  readonly count: number;
}

/** Pieces that were really packed, per box, kinds in the order of their first draw. */
const slotsOf = async (tx: Tx, batchId: string, boxes: number): Promise<Slot[]> => {
  const draws = await tx.draw.findMany({
    where: { batchId, lot: { item: { kind: 'piece' } } },
    orderBy: { at: 'asc' },
    include: { lot: { include: { item: true } } },
  });
  const kinds = new Map<string, { lotId: string; itemName: string; drawn: number }>();
  for (const draw of draws) {
    const { id, name } = draw.lot.item;
    const before = kinds.get(id)?.drawn ?? 0;
    const drawn = before + Number(draw.quantity);
    kinds.set(id, { lotId: draw.lotId, itemName: name, drawn });
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
  const presence = counterPresence(await specificationsBehind(tx, [slot.lotId]), market);
  const named = (wanted: string): string[] =>
    market.allergens
      .filter((allergen) => presence[allergen] === wanted)
      .map((allergen) => allergenName(allergen, language));
  return {
    number,
    name: slot.itemName,
    description: null,
    contains: named('contains'),
    mayContain: named('may_contain'),
    allergensUnknown: named('unknown').length > 0,
  };
};

/** The card that lies in a box: its slots, its pieces and what they contain. */
export const drawLegendCard = async (
  tx: Tx,
  by: By,
  label: LotLabel,
  dto: PrintLabelsDto,
): Promise<{ content: object; pdf: Buffer }> => {
  const { lot, workshop, ask } = label;
  const language = paperLanguage(ask.languages);
  const slots = lot.batchId
    ? await slotsOf(tx, lot.batchId, Math.max(1, Number(lot.madeQuantity)))
    : [];
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
  const size = dto.stock
    ? { widthMm: Number(dto.stock['widthMm']), heightMm: Number(dto.stock['heightMm']) }
    : { widthMm: 210, heightMm: 148 };
  const head = { title: view.boxName, language, author: workshop.name, createdAt: by.at };
  return { content: view, pdf: orRefuse(await legendCard(view, size, head)) };
};
