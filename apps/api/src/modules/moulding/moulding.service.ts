import { Injectable } from '@nestjs/common';
import {
  cavityVolumes,
  chocolateShare,
  pieceMasses,
  weighedParts,
  type CavityShape,
  type PieceMasses,
  type Sample,
} from '../../domain/moulding';
import { Decimal } from '../../domain/units';
import { quantityText } from '../../platform/database/decimals';
import { orRefuse, RefusalError } from '../../platform/problems';
import type {
  CavityDto,
  CavityView,
  PieceView,
  SampleView,
  WeighingsDto,
  WeighingsView,
} from './moulding.dto';
import { say } from '../../domain/words/say';

/** Common practice, no source: a solid shell, and a ganache without much air. */
const CHOCOLATE_DENSITY = '1.27';
const FILLING_DENSITY = '1.18';

/** What a cavity holds and what a piece weighs, by drawing or by weighing. Stores nothing. */
@Injectable()
export class MouldingService {
  cavity(dto: CavityDto): CavityView {
    const volumes = orRefuse(
      cavityVolumes({
        shape: shapeOf(dto),
        wallMm: new Decimal(dto.wallMm),
        capGapMm: new Decimal(dto.capGapMm),
        measuredVolumeMl: dto.measuredVolumeMl ? new Decimal(dto.measuredVolumeMl) : null,
      }),
    );
    const chocolate = new Decimal(dto.chocolateDensity ?? CHOCOLATE_DENSITY);
    const filling = new Decimal(dto.fillingDensity ?? FILLING_DENSITY);
    return {
      ...pieceView(pieceMasses(volumes, chocolate, filling)),
      cavityMl: volumes.cavityMl.toFixed(4),
      shellMl: volumes.shellMl.toFixed(4),
      fillingMl: volumes.fillingMl.toFixed(4),
      capMl: volumes.capMl.toFixed(4),
    };
  }

  weighings(dto: WeighingsDto): WeighingsView {
    const parts = orRefuse(
      weighedParts({
        shellsG: dto.shellsGrams.map(gramsOf),
        filledG: dto.filledGrams.map(gramsOf),
        cappedG: dto.cappedGrams.map(gramsOf),
      }),
    );
    return {
      ...pieceView({
        shellG: parts.shells.meanG,
        fillingG: parts.fillingG,
        capG: parts.capG,
        pieceG: parts.capped.meanG,
      }),
      shells: sampleView(parts.shells),
      filled: sampleView(parts.filled),
      capped: sampleView(parts.capped),
    };
  }
}

const gramsOf = (text: string): Decimal => {
  if (/^\d{1,6}(\.\d{1,3})?$/.test(text)) return new Decimal(text);
  const detail = say`“${text}” is not a weight in grams, as 8.615.`;
  throw new RefusalError({ code: 'weighings-unusable', detail });
};

/** A measure that is missing counts as nought, which the domain refuses as leaving no room. */
const measure = (text: string | undefined): Decimal => new Decimal(text ?? '0');

const shapeOf = (dto: CavityDto): CavityShape => {
  if (dto.shape === 'hemisphere')
    return { kind: 'hemisphere', diameterMm: measure(dto.diameterMm) };
  const heightMm = measure(dto.heightMm);
  if (dto.shape === 'dome') {
    return { kind: 'dome', baseDiameterMm: measure(dto.diameterMm), heightMm };
  }
  return {
    kind: 'block',
    lengthMm: measure(dto.lengthMm),
    widthMm: measure(dto.widthMm),
    heightMm,
  };
};

const pieceView = (masses: PieceMasses): PieceView => {
  const share = chocolateShare(masses.shellG.plus(masses.capG), masses.pieceG);
  return {
    shellGrams: quantityText(masses.shellG),
    fillingGrams: quantityText(masses.fillingG),
    capGrams: quantityText(masses.capG),
    pieceGrams: quantityText(masses.pieceG),
    chocolateShare: { ...share, chocolatePercent: share.chocolatePercent.toFixed(2) },
  };
};

const sampleView = (sample: Sample): SampleView => ({
  meanGrams: quantityText(sample.meanG),
  standardDeviationGrams: quantityText(sample.standardDeviationG),
  lowestGrams: quantityText(sample.lowestG),
  highestGrams: quantityText(sample.highestG),
});
