import {
  Choice,
  Day,
  DecimalText,
  Flag,
  Grams,
  Id,
  ListOf,
  Money,
  Quantity,
  Text,
} from '../../platform/dto';
import { OUTPUT_ROLES } from './batch-choices';

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

  @Text({ nullable: true, description: 'Why it was taken back; it counts for nothing then' })
  takenBackBecause: string | null;
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
