import { Choice, DecimalText, Flag, Grams, Nested, Text, Texts } from '../../platform/dto';

const mm = { places: 2 } as const;
const ml = { places: 4 } as const;

export class CavityDto {
  @Choice(['hemisphere', 'dome', 'block'])
  shape: string;

  @DecimalText({ ...mm, optional: true, description: 'Of a hemisphere, or of the base of a dome' })
  diameterMm?: string;

  @DecimalText({ ...mm, optional: true })
  lengthMm?: string;

  @DecimalText({ ...mm, optional: true })
  widthMm?: string;

  @DecimalText({ ...mm, optional: true, description: 'Of a dome or a block' })
  heightMm?: string;

  @DecimalText(mm)
  wallMm: string;

  @DecimalText({ ...mm, description: 'Depth left open for the cap' })
  capGapMm: string;

  @DecimalText({ ...ml, optional: true, nullable: true, description: 'By weighing with water' })
  measuredVolumeMl?: string | null;

  @DecimalText({ places: 3, optional: true, description: '1.27 when left out, g/mL' })
  chocolateDensity?: string;

  @DecimalText({ places: 3, optional: true, description: '1.18 when left out: measure it, g/mL' })
  fillingDensity?: string;
}

export class WeighingsDto {
  @Texts({ max: 16, maxItems: 50, description: 'Grams of single pieces, usually ten' })
  shellsGrams: string[];

  @Texts({ max: 16, maxItems: 50 })
  filledGrams: string[];

  @Texts({ max: 16, maxItems: 50 })
  cappedGrams: string[];
}

export class ShareView {
  @DecimalText({ places: 2 })
  chocolatePercent: string;

  @Flag({ description: 'At least 25 % (Directive 2000/36/EC)' })
  enough: boolean;

  @Text({ max: 300 })
  reason: string;

  @Text({ max: 300 })
  caution: string;
}

export class PieceView {
  @Grams()
  shellGrams: string;

  @Grams()
  fillingGrams: string;

  @Grams()
  capGrams: string;

  @Grams()
  pieceGrams: string;

  @Nested(() => ShareView)
  chocolateShare: ShareView;
}

export class CavityView extends PieceView {
  @DecimalText(ml)
  cavityMl: string;

  @DecimalText(ml)
  shellMl: string;

  @DecimalText(ml)
  fillingMl: string;

  @DecimalText(ml)
  capMl: string;
}

export class SampleView {
  @Grams()
  meanGrams: string;

  @Grams()
  standardDeviationGrams: string;

  @Grams()
  lowestGrams: string;

  @Grams()
  highestGrams: string;
}

export class WeighingsView extends PieceView {
  @Nested(() => SampleView)
  shells: SampleView;

  @Nested(() => SampleView)
  filled: SampleView;

  @Nested(() => SampleView)
  capped: SampleView;
}
