import type { PriceMark } from '../../domain/label';
import { unitPriceOf } from '../../domain/pricing';
import { Decimal, roundTo } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';
import { loadWorkshop } from '../workshop';
import { itemSettings, packOf } from './label-settings';
import { lotToLabel } from './lot-facts';

/** Price and price per kilogram as printed; both are those of the net weight on the label. */
export const priceMark = async (
  tx: Tx,
  lotCode: string,
  price: string | undefined,
): Promise<PriceMark | null> => {
  if (price === undefined) return null;
  const { currency } = await loadWorkshop(tx);
  const { item } = await lotToLabel(tx, lotCode);
  const { netG } = packOf(itemSettings(item), item);
  const gross = roundTo(new Decimal(price), 2);
  const shown = `${gross.toFixed(2)} ${currency}`;
  if (!netG.greaterThan(0)) return { price: shown, unitPrice: null };
  const unit = unitPriceOf(gross, netG, false, { exemptMixedAssortments: false });
  return {
    price: shown,
    unitPrice: unit.duty === 'required' ? `${unit.pricePerKg.toFixed(2)} ${currency}/kg` : null,
  };
};
