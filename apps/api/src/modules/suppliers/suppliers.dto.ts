import { Flag, Id, Text, Texts, Whole } from '../../platform/dto';

export class CreateSupplierDto {
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
}

export class ChangeSupplierDto {
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

  @Flag({ optional: true })
  active?: boolean;
}

export class SupplierView {
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

  @Flag()
  active: boolean;

  @Whole()
  version: number;
}
