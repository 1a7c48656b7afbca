import { Injectable } from '@nestjs/common';
import {
  infusionFromWeights,
  infusionPlan,
  RETENTION_GUIDE,
  type InfusionBalance,
} from '../../domain/composition';
import { Decimal } from '../../domain/units';
import { quantityText } from '../../platform/database/decimals';
import { RefusalError } from '../../platform/problems';
import type {
  InfusionPlanDto,
  InfusionView,
  InfusionWeightsDto,
  RetentionGuidesView,
} from './infusions.dto';
import { say, type Sentence } from '../../domain/words/say';

const CAUTION = say`What was strained out stays an ancestor of the product, with its allergens. Book the top-up as a draw of its own: it is usually another lot. Without weighing, the composition is assumed.`;

/** Weigh-back and plan of an infusion. Stores nothing: draws and losses are booked on the batch. */
@Injectable()
export class InfusionsService {
  guide(): RetentionGuidesView {
    return { items: RETENTION_GUIDE.map((row) => ({ ...row })) };
  }

  fromWeights(dto: InfusionWeightsDto): InfusionView {
    return viewOf(
      infusionFromWeights({
        liquidG: new Decimal(dto.liquidGrams),
        boiledG: new Decimal(dto.boiledGrams),
        strainedG: new Decimal(dto.strainedGrams),
        solidsG: positive(dto.solidsGrams),
      }),
    );
  }

  plan(dto: InfusionPlanDto): InfusionView {
    return viewOf(
      infusionPlan(
        new Decimal(dto.liquidGrams),
        new Decimal(dto.steamGrams),
        positive(dto.solidsGrams),
        new Decimal(dto.retentionRatio),
      ),
    );
  }
}

const notValid = (detail: Sentence): RefusalError =>
  new RefusalError({ code: 'not-valid', detail });

const positive = (text: string): Decimal => {
  const grams = new Decimal(text);
  if (grams.greaterThan(0)) return grams;
  throw notValid(say`There is nothing to strain out: the solids weigh more than nought.`);
};

/** Weights only fall on the way. @throws RefusalError when they don't */
const viewOf = (balance: InfusionBalance): InfusionView => {
  const { steamG, heldBackG, retentionRatio, topUpG, discardedLiquidG } = balance;
  const figures = [steamG, heldBackG, topUpG, discardedLiquidG];
  if (figures.some((grams) => !grams.isFinite() || grams.isNegative())) {
    throw notValid(say`Liquid only gets less from the pot to the sieve. Check the three weights.`);
  }
  return {
    steamGrams: quantityText(steamG),
    heldBackGrams: quantityText(heldBackG),
    retentionRatio: retentionRatio.toFixed(3),
    topUpGrams: quantityText(topUpG),
    discardedLiquidGrams: quantityText(discardedLiquidG),
    caution: CAUTION,
  };
};
