import { Choice, Id, Instant, JsonObject, Text } from '../../platform/dto';
import { MARKETS } from '../workshop';

export class DecideContactDto {
  @Choice(MARKETS, { optional: true })
  market?: string;

  @Text({ max: 40 })
  allergen: string;

  @Choice(['state', 'leave_out'])
  decision: string;

  @Text({ max: 500 })
  reason: string;
}

export class ContactDecisionView {
  @Id()
  id: string;

  @Choice(MARKETS)
  market: string;

  @Text()
  allergen: string;

  @Choice(['state', 'leave_out'])
  decision: string;

  @Text()
  reason: string;

  @JsonObject({ description: 'The numbers that stood then' })
  assessment: Record<string, unknown>;

  @Text()
  decidedBy: string;

  @Instant()
  at: string;
}
