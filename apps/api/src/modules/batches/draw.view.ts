import type { StockShare } from '../../domain/stock';
import { moneyText, quantityText } from '../../platform/database/decimals';
import { Choice, Flag, Grams, Id, Instant, Money, Quantity, Text } from '../../platform/dto';

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
