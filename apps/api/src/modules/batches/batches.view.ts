import {
  Choice,
  DecimalText,
  Id,
  Instant,
  ListOf,
  Nested,
  Quantity,
  Text,
  Whole,
} from '../../platform/dto';
import { BATCH_KINDS, BATCH_STATES } from './batch-choices';
import { DrawView } from './draw.view';
import { ReadingView, DueReadingView, MouldUseView, LossView } from './bench.view';
import { BatchOutputView, BatchLineView, BatchBalanceView } from './output.view';
import { BatchPartsView, PlaceInMakingView } from './parts.view';

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

  @Nested(() => PlaceInMakingView, {
    nullable: true,
    description: 'Which part of its making it is; null for a batch that is made in one',
  })
  part: PlaceInMakingView | null;

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

  @Nested(() => BatchPartsView, {
    nullable: true,
    description: 'The pots or goes of one making; null for a batch that is made in one',
  })
  parts: BatchPartsView | null;

  @Whole()
  version: number;
}
