import {
  isTemperedProduct,
  TABLE_CURVES,
  type TemperedProduct,
  type TemperingCurve,
  type TempWindow,
} from '../../domain/tempering';
import { Decimal } from '../../domain/units';
import type { Prisma } from '../../generated/prisma/client';
import type { TemperingCurveDto, TempWindowDto } from './tempering.dto';
import { say } from '../../domain/words/say';

export const TEMPERING = 'tempering';

export interface CurveInForce {
  readonly product: TemperedProduct;
  readonly isMakers: boolean;
  readonly curve: TemperingCurve;
}

const windowOf = (stored: TempWindowDto): TempWindow => ({
  lowC: new Decimal(stored.lowC),
  highC: new Decimal(stored.highC),
});

/** The maker's curve when one is stated, the table's for the product else; null without a product. */
export const curveOf = (settings: Prisma.JsonValue): CurveInForce | null => {
  if (typeof settings !== 'object' || settings === null || Array.isArray(settings)) return null;
  const stored = settings[TEMPERING] as Partial<TemperingCurveDto> | undefined;
  const product = stored?.product ?? '';
  if (!stored || !isTemperedProduct(product)) return null;
  const { melt, cool, work } = stored;
  if (!melt || !work) return { product, isMakers: false, curve: TABLE_CURVES[product] };
  const source = stored.source ?? say`the maker of this chocolate`;
  const curve = {
    melt: windowOf(melt),
    cool: cool ? windowOf(cool) : null,
    work: windowOf(work),
    source,
  };
  return { product, isMakers: true, curve };
};
