import { Choice, Flag, Id, Text, Texts, Whole } from '../../platform/dto';

export const PRICE_LISTS = ['counter', 'trade'] as const;

export class CreateCustomerDto {
  @Text({ max: 120 })
  name: string;

  @Texts({ max: 120, maxItems: 6, optional: true })
  addressLines?: string[];

  @Text({ optional: true, nullable: true, max: 120 })
  email?: string | null;

  @Text({ optional: true, nullable: true, max: 60 })
  phone?: string | null;

  @Text({ optional: true, nullable: true, max: 2000 })
  note?: string | null;

  @Choice(PRICE_LISTS, { optional: true })
  priceList?: string;

  @Whole({
    optional: true,
    max: 3650,
    description: 'Days of life that a box must still have when it is sent',
  })
  minimumLifeDays?: number;
}

export class ChangeCustomerDto {
  @Text({ optional: true, max: 120 })
  name?: string;

  @Texts({ optional: true, max: 120, maxItems: 6 })
  addressLines?: string[];

  @Text({ optional: true, nullable: true, max: 120 })
  email?: string | null;

  @Text({ optional: true, nullable: true, max: 60 })
  phone?: string | null;

  @Text({ optional: true, nullable: true, max: 2000 })
  note?: string | null;

  @Choice(PRICE_LISTS, { optional: true })
  priceList?: string;

  @Whole({
    optional: true,
    max: 3650,
    description: 'Days of life that a box must still have when it is sent',
  })
  minimumLifeDays?: number;

  @Flag({ optional: true })
  active?: boolean;
}

export class CustomerView {
  @Id()
  id: string;

  @Text()
  name: string;

  @Texts()
  addressLines: string[];

  @Text({ nullable: true })
  email: string | null;

  @Text({ nullable: true })
  phone: string | null;

  @Text({ nullable: true })
  note: string | null;

  @Choice(PRICE_LISTS)
  priceList: string;

  @Whole()
  minimumLifeDays: number;

  @Flag()
  active: boolean;

  @Whole()
  version: number;
}
