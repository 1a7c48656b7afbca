import { designedCost, totalCost, type CostEntry, type CostingRefusal } from '../costing';
import {
  marginPercent,
  splitShown,
  vatRateOn,
  type PriceListKind,
  type PricingRefusal,
} from '../pricing';
import { ok, type Result } from '../refusals/result';
import type { Decimal } from '../units';
import { applyChanges, type Change, type WhatIfBasis } from './apply';

export interface Scenario {
  readonly name: string;
  readonly changes: readonly Change[];
}

/** A thing that is sold, with its price as its list shows it; the price stays as it is. */
export interface SoldItem {
  readonly item: string;
  readonly vatClass: string;
  readonly list: PriceListKind;
  /** Absent: not priced yet, so there is no margin to state. */
  readonly price?: Decimal;
}

export interface Outcome {
  readonly item: string;
  readonly entries: readonly CostEntry[];
  readonly cost: Decimal;
  readonly net?: Decimal;
  readonly marginPercent?: Decimal;
}

export interface ScenarioOutcome {
  readonly name: string;
  readonly outcomes: readonly Outcome[];
}

type WhatIfRefusal = CostingRefusal | PricingRefusal;

/**
 * Costs and margins of all sold items under each scenario, the unchanged one first. Each scenario
 * starts from the same basis, so they can be laid side by side; nothing is stored or changed.
 */
export const compareScenarios = (
  basis: WhatIfBasis,
  sold: readonly SoldItem[],
  scenarios: readonly Scenario[],
): Result<ScenarioOutcome[], WhatIfRefusal> => {
  const results: ScenarioOutcome[] = [];
  for (const { name, changes } of [{ name: 'unchanged', changes: [] }, ...scenarios]) {
    const changed = applyChanges(basis, changes);
    const outcomes: Outcome[] = [];
    for (const item of sold) {
      const outcome = outcomeOf(item, changed);
      if (!outcome.ok) return outcome;
      outcomes.push(outcome.value);
    }
    results.push({ name, outcomes });
  }
  return ok(results);
};

const outcomeOf = (sold: SoldItem, basis: WhatIfBasis): Result<Outcome, WhatIfRefusal> => {
  const entries = designedCost(sold.item, basis.costs);
  if (!entries.ok) return entries;
  const cost = totalCost(entries.value);
  const bare = { item: sold.item, entries: entries.value, cost };
  if (!sold.price) return ok(bare);
  const rate = vatRateOn(basis.vat, sold.vatClass, basis.costs.day);
  if (!rate.ok) return rate;
  const { net } = splitShown(sold.price, sold.list, rate.value);
  const margin = marginPercent(net, cost);
  return ok({ ...bare, net, ...(margin ? { marginPercent: margin } : {}) });
};
