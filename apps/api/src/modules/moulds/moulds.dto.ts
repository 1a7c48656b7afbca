import { Choice, Flag, Id, Instant, ListOf, Text, Whole, Wholes } from '../../platform/dto';
import { PageQuery } from '../../platform/paging/page';

export const MOULD_STATES = ['sound', 'chipped', 'retired'] as const;

export class CreateMouldsDto {
  @Id()
  designId: string;

  @Whole({ min: 1, max: 50, description: 'Trays to add; each gets a tag of its own' })
  count: number;
}

export class MouldQuery extends PageQuery {
  @Id({ optional: true })
  designId?: string;

  @Choice(MOULD_STATES, { optional: true })
  state?: string;
}

export class InspectionDto {
  @Choice(MOULD_STATES)
  result: string;

  @Text({ optional: true, nullable: true, max: 1000, description: 'What was seen, and where' })
  note?: string | null;
}

export class InspectionView {
  @Id()
  id: string;

  @Choice(MOULD_STATES)
  result: string;

  @Text({ nullable: true })
  note: string | null;

  @Instant()
  at: string;
}

export class MouldUseOfTrayView {
  @Id()
  batchId: string;

  @Text()
  batchCode: string;

  @Whole()
  cavitiesFilled: number;

  @Wholes()
  rejectCavities: number[];

  @Instant()
  at: string;
}

export class MouldView {
  @Id()
  id: string;

  @Text()
  tag: string;

  @Id()
  designId: string;

  @Text()
  designName: string;

  @Whole()
  cavities: number;

  @Choice(MOULD_STATES)
  state: string;

  @Text({ nullable: true, description: 'Open batch that has it now' })
  inBatchCode: string | null;

  @Instant({ nullable: true })
  lastInspectedAt: string | null;

  @Instant({
    nullable: true,
    description: 'What was cast since then is in doubt when it is chipped',
  })
  lastSoundAt: string | null;
}

export class MouldDetailView extends MouldView {
  @ListOf(() => InspectionView, { description: 'Newest first' })
  inspections: InspectionView[];

  @ListOf(() => MouldUseOfTrayView, { description: 'The newest hundred' })
  uses: MouldUseOfTrayView[];

  @Flag({ description: 'It was cast in since the last sound inspection' })
  usedSinceSound: boolean;
}

export class MouldList {
  @ListOf(() => MouldView)
  items: MouldView[];
}
