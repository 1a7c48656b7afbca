import type { StockShare } from '../../domain/stock';
import { moneyText, quantityText } from '../../platform/database/decimals';
import {
  Choice,
  Day,
  DecimalText,
  Flag,
  Grams,
  Id,
  Instant,
  ListOf,
  Money,
  Nested,
  Quantity,
  Text,
  Whole,
  Wholes,
} from '../../platform/dto';
import { BATCH_KINDS, BATCH_STATES, LOSS_KINDS, MEASURES, OUTPUT_ROLES } from './batches.dto';

export class DrawView {
  @Id()
  id: string;

  @Text()
  lotCode: string;

  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Text()
  role: string;

  @Choice(['g', 'pc'])
  unit: string;

  @Quantity()
  quantity: string;

  @Grams({ description: 'Grams of food; zero for packaging' })
  massGrams: string;

  @Money()
  cost: string;

  @Instant()
  at: string;

  @Text({ nullable: true })
  reason: string | null;

  @Flag({ description: 'It was put back, or corrected by another draw' })
  reversed: boolean;
}

interface DrawFacts {
  readonly id: string;
  readonly lot: {
    readonly code: string;
    readonly itemId: string;
    readonly itemName: string;
    readonly unit: string;
  };
  readonly role: string;
  readonly share: StockShare;
  readonly at: Date;
  readonly reason: string | null;
}

export const drawView = (draw: DrawFacts): DrawView => ({
  id: draw.id,
  lotCode: draw.lot.code,
  itemId: draw.lot.itemId,
  itemName: draw.lot.itemName,
  role: draw.role,
  unit: draw.lot.unit,
  quantity: quantityText(draw.share.quantity),
  massGrams: quantityText(draw.share.massG),
  cost: moneyText(draw.share.cost),
  at: draw.at.toISOString(),
  reason: draw.reason,
  reversed: false,
});

export class ReadingView {
  @Id()
  id: string;

  @Choice(MEASURES)
  measure: string;

  @DecimalText({ places: 4, negative: true })
  value: string;

  @DecimalText({ places: 4, negative: true, nullable: true })
  low: string | null;

  @DecimalText({ places: 4, negative: true, nullable: true })
  high: string | null;

  @Choice(['in', 'low', 'high', 'no_limit'])
  verdict: string;

  @Text({ nullable: true })
  step: string | null;

  @Text({ nullable: true })
  instrument: string | null;

  @Text({ nullable: true })
  correctiveAction: string | null;

  @Instant()
  at: string;
}

export class DueReadingView {
  @Text()
  step: string;

  @Text()
  measure: string;

  @DecimalText({ places: 4, negative: true, nullable: true })
  low: string | null;

  @DecimalText({ places: 4, negative: true, nullable: true })
  high: string | null;
}

export class MouldUseView {
  @Id()
  id: string;

  @Text()
  mouldTag: string;

  @Text()
  designName: string;

  @Whole()
  cavitiesFilled: number;

  @Wholes()
  rejectCavities: number[];

  @Instant()
  at: string;
}

export class LossView {
  @Id()
  id: string;

  @Choice(LOSS_KINDS)
  kind: string;

  @DecimalText({ places: 3, negative: true })
  massGrams: string;

  @Text({ nullable: true })
  lotCode: string | null;

  @Text({ nullable: true })
  note: string | null;

  @Instant()
  at: string;

  @Flag({ description: 'It was taken back, or takes another back' })
  reversed: boolean;
}

export class BatchOutputView {
  @Id()
  id: string;

  @Text()
  lotCode: string;

  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Choice(OUTPUT_ROLES)
  role: string;

  @Choice(['g', 'pc'])
  unit: string;

  @Quantity()
  quantity: string;

  @Grams()
  massGrams: string;

  @Money()
  cost: string;

  @Quantity()
  onHandQuantity: string;

  @Day({ nullable: true })
  bestBefore: string | null;

  @Day({ nullable: true })
  useBy: string | null;

  @Flag()
  held: boolean;
}

export class ProposedLotView {
  @Text()
  lotCode: string;

  @Quantity()
  onHandQuantity: string;

  @Day({ nullable: true, description: 'The earlier of its two dates' })
  date: string | null;

  @Text({ nullable: true, description: 'The tank that it is in' })
  tankName: string | null;
}

export class BatchLineView {
  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Text()
  role: string;

  @Choice(['g', 'pc'])
  unit: string;

  @Quantity({ description: 'Scaled to what was planned' })
  plannedQuantity: string;

  @Quantity({ description: 'Drawn so far in this role' })
  drawnQuantity: string;

  @ListOf(() => ProposedLotView, { description: 'Usable lots, first expired first' })
  proposedLots: ProposedLotView[];
}

export class BatchBalanceView {
  @Grams()
  drawnGrams: string;

  @Grams()
  madeGrams: string;

  @Grams()
  lostGrams: string;

  @DecimalText({ places: 3, negative: true, description: 'Drawn less made less lost' })
  differenceGrams: string;

  @Money()
  drawnCost: string;
}

export class BatchSummaryView {
  @Id()
  id: string;

  @Text()
  code: string;

  @Choice(BATCH_KINDS)
  kind: string;

  @Choice(BATCH_STATES)
  state: string;

  @Id()
  itemId: string;

  @Text({ description: 'What is made' })
  itemName: string;

  @Whole({ nullable: true, description: 'Number of the recipe version' })
  recipeNumber: number | null;

  @Text({ nullable: true, description: 'The tank that was charged' })
  tankName: string | null;

  @Text()
  operatorName: string;

  @Quantity({ nullable: true })
  plannedQuantity: string | null;

  @Instant()
  openedAt: string;

  @Instant({ nullable: true })
  endedAt: string | null;
}

export class BatchView extends BatchSummaryView {
  @Id({ nullable: true })
  recipeVersionId: string | null;

  @Choice(['g', 'pc'])
  unit: string;

  @Whole({ nullable: true })
  plannedTrays: number | null;

  @Id({ nullable: true })
  placeId: string | null;

  @DecimalText({ places: 2, nullable: true })
  labourMinutes: string | null;

  @Text({ nullable: true })
  endReason: string | null;

  @Text({ nullable: true })
  imbalanceReason: string | null;

  @ListOf(() => BatchLineView)
  lines: BatchLineView[];

  @ListOf(() => DrawView)
  draws: DrawView[];

  @ListOf(() => LossView)
  losses: LossView[];

  @ListOf(() => ReadingView)
  readings: ReadingView[];

  @ListOf(() => DueReadingView, { description: 'Check points without a reading' })
  readingsDue: DueReadingView[];

  @ListOf(() => MouldUseView)
  mouldUses: MouldUseView[];

  @ListOf(() => BatchOutputView)
  outputs: BatchOutputView[];

  @Nested(() => BatchBalanceView)
  balance: BatchBalanceView;

  @Whole()
  version: number;
}
