import { Id, Money, Quantity, Text, Whole } from '../../platform/dto';

export class SupplyTermDto {
  @Id()
  supplierId: string;

  @Whole({ max: 365, description: 'Calendar days from ordering to having it' })
  leadDays: number;

  @Quantity({ nullable: true, description: 'Grams or pieces of one pack; null: any quantity' })
  packQuantity: string | null;
}

export class SupplyTermView extends SupplyTermDto {
  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Text()
  supplierName: string;
}

export class MinimumOrderDto {
  @Money({ description: 'Money below which the supplier doesn’t deliver' })
  amount: string;
}

export class MinimumOrderView extends MinimumOrderDto {
  @Id()
  supplierId: string;
}
