import { REFERENCE_SALTS } from '../../domain/water-activity';
import { PageQuery } from '../../platform/paging/page';
import { Choice, DecimalText, Flag, Id, Instant, ListOf, Text } from '../../platform/dto';

export class SaltCheckDto {
  @Choice(REFERENCE_SALTS, { description: 'Saturated solution' })
  salt: string;

  @DecimalText({ places: 2, description: 'Of the solution, 5–50 °C' })
  tempC: string;

  @DecimalText({ places: 4, description: 'What the meter read, as a fraction' })
  reading: string;
}

export class CalibrateDto {
  @Text({ max: 120, description: 'Name of the meter, as readings name it' })
  instrument: string;

  @ListOf(() => SaltCheckDto, { min: 1, max: 12 })
  checks: SaltCheckDto[];

  @Text({ optional: true, nullable: true, max: 500 })
  note?: string | null;
}

export class CalibrationQuery extends PageQuery {
  @Text({ optional: true, max: 120 })
  instrument?: string;
}

export class SaltDeviationView extends SaltCheckDto {
  @DecimalText({ places: 4 })
  expected: string;

  @DecimalText({ places: 4, negative: true })
  deviation: string;
}

export class CalibrationView {
  @Id()
  id: string;

  @Text()
  instrument: string;

  @ListOf(() => SaltDeviationView)
  checks: SaltDeviationView[];

  @Flag({ description: 'Only readings by a meter that passed override an estimate' })
  passed: boolean;

  @DecimalText({ places: 4 })
  uncertainty: string;

  @Text()
  advice: string;

  @Text({ nullable: true })
  note: string | null;

  @Instant()
  at: string;
}
