import { DecimalText, Grams, Id, JsonObject, Text, Whole } from '../../platform/dto';

const volume = { places: 4, description: 'Water volume of one cavity, mL' } as const;
const geometry = {
  description: 'Measures of the drawing in mm, by shape, as decimal text',
} as const;

export class CreateMouldDesignDto {
  @Text({ max: 120 })
  name: string;

  @Text({ max: 60, description: 'What its cavities look like, as half sphere or square' })
  shape: string;

  @Whole({ min: 1, max: 100 })
  rows: number;

  @Whole({ min: 1, max: 100 })
  columns: number;

  @DecimalText({ ...volume, optional: true, nullable: true })
  cavityVolumeMl?: string | null;

  @Grams({ optional: true, nullable: true, description: 'Weight of a finished piece' })
  pieceMassGrams?: string | null;

  @JsonObject({ ...geometry, optional: true })
  geometry?: Record<string, unknown>;
}

export class ChangeMouldDesignDto {
  @Text({ optional: true, max: 120 })
  name?: string;

  @Text({ optional: true, max: 60 })
  shape?: string;

  @DecimalText({ ...volume, optional: true, nullable: true })
  cavityVolumeMl?: string | null;

  @Grams({ optional: true, nullable: true })
  pieceMassGrams?: string | null;

  @JsonObject({ ...geometry, optional: true })
  geometry?: Record<string, unknown>;
}

export class MouldDesignView {
  @Id()
  id: string;

  @Text()
  name: string;

  @Text()
  shape: string;

  @Whole()
  rows: number;

  @Whole()
  columns: number;

  @Whole({ description: 'Cavities of one tray' })
  cavities: number;

  @DecimalText({ ...volume, nullable: true })
  cavityVolumeMl: string | null;

  @Grams({ nullable: true })
  pieceMassGrams: string | null;

  @JsonObject(geometry)
  geometry: Record<string, unknown>;

  @Whole({ description: 'Trays that are sound' })
  soundMoulds: number;

  @Whole({ description: 'Trays that are not retired' })
  keptMoulds: number;

  @Whole()
  version: number;
}
