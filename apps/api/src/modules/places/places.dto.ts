import { Choice, DecimalText, Flag, Id, Text, Whole } from '../../platform/dto';

export const PLACE_KINDS = ['store', 'fridge', 'freezer', 'room'] as const;

const degrees = { places: 2, negative: true, nullable: true } as const;
const percent = { places: 2, nullable: true, description: '0–100' } as const;

export class CreatePlaceDto {
  @Text({ max: 80 })
  name: string;

  @Choice(PLACE_KINDS)
  kind: string;

  @DecimalText({ ...degrees, optional: true })
  minTempC?: string | null;

  @DecimalText({ ...degrees, optional: true })
  maxTempC?: string | null;

  @DecimalText({ ...percent, optional: true })
  maxHumidityPercent?: string | null;

  @Whole({ optional: true, nullable: true, min: 1, max: 744 })
  readingEveryHours?: number | null;
}

export class ChangePlaceDto {
  @Text({ optional: true, max: 80 })
  name?: string;

  @DecimalText({ ...degrees, optional: true })
  minTempC?: string | null;

  @DecimalText({ ...degrees, optional: true })
  maxTempC?: string | null;

  @DecimalText({ ...percent, optional: true })
  maxHumidityPercent?: string | null;

  @Whole({ optional: true, nullable: true, min: 1, max: 744 })
  readingEveryHours?: number | null;

  @Flag({ optional: true })
  active?: boolean;
}

export class PlaceView {
  @Id()
  id: string;

  @Text()
  name: string;

  @Choice(PLACE_KINDS)
  kind: string;

  @Text({ description: 'Code on the tag of the place' })
  tag: string;

  @DecimalText(degrees)
  minTempC: string | null;

  @DecimalText(degrees)
  maxTempC: string | null;

  @DecimalText(percent)
  maxHumidityPercent: string | null;

  @Whole({ nullable: true })
  readingEveryHours: number | null;

  @Flag()
  active: boolean;

  @Whole()
  version: number;
}
