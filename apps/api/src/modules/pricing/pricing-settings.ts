import type { EndingRule, PriceTarget, UnitPriceRule } from '../../domain/pricing';
import { Decimal } from '../../domain/units';
import type { Prisma, Workshop } from '../../generated/prisma/client';
import type { PriceRuleView, PricingSettingsView } from './pricing-settings.dto';

/** How prices are made until someone says otherwise: to the cent, no exemption, no floor. */
const USUAL: Omit<PricingSettingsView, 'version'> = {
  endings: ['0.00'],
  endingStep: '0.01',
  endingDirection: 'nearest',
  marginFloorPercent: '0',
  unitPriceExemptBelowGrams: null,
  unitPriceExemptMixed: false,
};

/** Prices of one item until someone says otherwise. */
const USUAL_RULE: PriceRuleView = {
  counterTargetKind: 'margin',
  counterTargetPercent: '60',
  tradeTargetKind: 'margin',
  tradeTargetPercent: '40',
  mixedAssortment: false,
};

const keyOf = <T extends object>(settings: Prisma.JsonValue, key: string, usual: T): T => {
  const all = typeof settings === 'object' && settings !== null && !Array.isArray(settings);
  const stored = all ? settings[key] : undefined;
  const usable = typeof stored === 'object' && stored !== null && !Array.isArray(stored);
  return usable ? { ...usual, ...stored } : usual;
};

export const pricingSettings = (workshop: Workshop): PricingSettingsView => ({
  ...keyOf(workshop.settings, 'pricing', USUAL),
  version: workshop.version,
});

export const priceRule = (settings: Prisma.JsonValue): PriceRuleView =>
  keyOf(settings, 'pricing', USUAL_RULE);

/** Settings with one key replaced, as the row stores them. */
export const withKey = (
  settings: Prisma.JsonValue,
  key: string,
  value: object,
): Prisma.InputJsonObject => ({
  ...(settings as Prisma.InputJsonObject),
  [key]: { ...value },
});

export const endingRule = (settings: PricingSettingsView): EndingRule => ({
  endings: settings.endings.map((ending) => new Decimal(ending)),
  step: new Decimal(settings.endingStep),
  direction: settings.endingDirection as EndingRule['direction'],
});

export const unitPriceRule = (settings: PricingSettingsView): UnitPriceRule => ({
  exemptMixedAssortments: settings.unitPriceExemptMixed,
  ...(settings.unitPriceExemptBelowGrams === null
    ? {}
    : { exemptBelowG: new Decimal(settings.unitPriceExemptBelowGrams) }),
});

export const targetOf = (rule: PriceRuleView, list: 'counter' | 'trade'): PriceTarget => {
  const [kind, percent] =
    list === 'counter'
      ? [rule.counterTargetKind, rule.counterTargetPercent]
      : [rule.tradeTargetKind, rule.tradeTargetPercent];
  return { kind: kind as PriceTarget['kind'], percent: new Decimal(percent) };
};
