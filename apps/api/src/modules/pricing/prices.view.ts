import {
  lowestBeforeReduction,
  marginPercent,
  marginWarning,
  markUpPercent,
  splitShown,
  unitPriceOf,
  type ListedPrice,
  type PriceListKind,
  type VatSplit,
} from '../../domain/pricing';
import { Decimal } from '../../domain/units';
import type { Item } from '../../generated/prisma/client';
import { decimalFromDb } from '../../platform/database/decimals';
import { orRefuse } from '../../platform/problems';
import type { CurrentPriceView, PricedView } from './prices.dto';
import { priceRule, unitPriceRule } from './pricing-settings';
import type { PricingSettingsView } from './pricing-settings.dto';
import { say } from '../../domain/words/say';

/** What a price is judged against. */
export interface Judged {
  readonly item: Item;
  /** Of one, with everything; undefined when it can't be costed. */
  readonly cost: Decimal | undefined;
  readonly vatPercent: Decimal;
  readonly settings: PricingSettingsView;
}

const percentText = (percent: Decimal | undefined): string | null => percent?.toFixed(2) ?? null;

export const warningText = (
  net: Decimal,
  cost: Decimal,
  settings: PricingSettingsView,
): string | null => {
  const warning = orRefuse(marginWarning(net, cost, new Decimal(settings.marginFloorPercent)));
  if (!warning) return null;
  return say`The margin of ${warning.marginPercent.toFixed(2)} % is under the floor of ${warning.floorPercent.toFixed(2)} %; a net price of ${warning.netPriceForFloor.toFixed(2)} would hold it.`;
};

export const pricedView = (split: VatSplit, judged: Judged): PricedView => {
  const { item, cost, settings, vatPercent } = judged;
  const mixed = priceRule(item.settings).mixedAssortment;
  const unitPrice = item.nominalMassG
    ? unitPriceOf(split.gross, decimalFromDb(item.nominalMassG), mixed, unitPriceRule(settings))
    : undefined;
  return {
    net: split.net.toFixed(2),
    vat: split.vat.toFixed(2),
    gross: split.gross.toFixed(2),
    vatPercent: vatPercent.toFixed(3),
    marginPercent: cost ? percentText(marginPercent(split.net, cost)) : null,
    markUpPercent: cost ? percentText(markUpPercent(split.net, cost)) : null,
    pricePerKg: unitPrice?.pricePerKg.toFixed(2) ?? null,
    unitPriceDuty: unitPrice?.duty ?? null,
    warning: cost ? warningText(split.net, cost, settings) : null,
  };
};

/** The price that holds on a day, opened into its parts; null when none does yet. */
export const currentPriceView = (
  history: readonly ListedPrice[],
  holding: ListedPrice | undefined,
  list: PriceListKind,
  judged: Judged,
): CurrentPriceView | null => {
  if (!holding) return null;
  const before = lowestBeforeReduction(history, holding.fromDay);
  return {
    ...pricedView(splitShown(holding.price, list, judged.vatPercent), judged),
    fromDay: holding.fromDay,
    lowestBefore: before?.toFixed(2) ?? null,
  };
};
