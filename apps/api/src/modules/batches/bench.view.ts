import { Choice, DecimalText, Flag, Id, Instant, Text, Whole, Wholes } from '../../platform/dto';
import { MEASURES, LOSS_KINDS } from './batch-choices';

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

  @Text({ nullable: true, description: 'Why it was marked as wrong; null when it stands' })
  withdrawnBecause: string | null;
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

  @Text({ nullable: true, description: 'Why it was taken back; null when it stands' })
  withdrawnBecause: string | null;
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
