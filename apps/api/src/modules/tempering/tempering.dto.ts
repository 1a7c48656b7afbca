import { DecimalText, Choice, Flag, Id, ListOf, Nested, Text } from '../../platform/dto';

export const TEMPERED_PRODUCTS = ['dark', 'milk', 'white', 'coloured_cocoa_butter'] as const;
export const TEMPERING_STEPS = ['melt', 'cool', 'work'] as const;

const degrees = { places: 2 } as const;

export class TempWindowDto {
  @DecimalText(degrees)
  lowC: string;

  @DecimalText(degrees)
  highC: string;
}

export class TemperingCurveDto {
  @Choice(TEMPERED_PRODUCTS)
  product: string;

  @Nested(() => TempWindowDto, {
    optional: true,
    nullable: true,
    description: 'The maker’s own windows; all three, or none to use the table',
  })
  melt?: TempWindowDto | null;

  @Nested(() => TempWindowDto, { optional: true, nullable: true })
  cool?: TempWindowDto | null;

  @Nested(() => TempWindowDto, { optional: true, nullable: true })
  work?: TempWindowDto | null;

  @Text({ optional: true, max: 200, description: 'Where the maker’s windows come from' })
  source?: string;
}

export class TemperingReadingDto {
  @Choice(TEMPERING_STEPS)
  step: string;

  @DecimalText({ places: 2, negative: true })
  tempC: string;
}

export class RoomDto {
  @DecimalText({ places: 2, negative: true })
  productC: string;

  @DecimalText({ places: 2, negative: true })
  roomC: string;

  @DecimalText({ places: 2, description: 'Relative humidity, 1–100' })
  humidityPercent: string;
}

export class TemperingCheckView {
  @Choice(TEMPERING_STEPS)
  step: string;

  @Text({ description: 'As a check point of a recipe step' })
  measure: string;

  @DecimalText(degrees)
  low: string;

  @DecimalText(degrees)
  high: string;
}

export class TemperingView {
  @Id()
  itemId: string;

  @Text()
  itemName: string;

  @Choice(TEMPERED_PRODUCTS)
  product: string;

  @Flag({ description: 'The maker’s own curve, which beats the table' })
  isMakers: boolean;

  @Text({ max: 300 })
  source: string;

  @ListOf(() => TemperingCheckView)
  checks: TemperingCheckView[];

  @DecimalText({ ...degrees, nullable: true, description: 'Warmest filling for a shell of it' })
  warmestFillingC: string | null;
}

export class TemperingVerdictView {
  @Choice(['in', 'low', 'high'])
  verdict: string;

  @DecimalText(degrees)
  lowC: string;

  @DecimalText(degrees)
  highC: string;

  @Text({ max: 300, description: 'What to do next' })
  advice: string;

  @Text({ max: 300 })
  source: string;
}

export class RoomVerdictView {
  @DecimalText({ places: 2, negative: true })
  dewPointC: string;

  @Flag({ description: 'Water settles on the pieces: sugar bloom follows' })
  condenses: boolean;
}
