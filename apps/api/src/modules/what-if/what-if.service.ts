import { Injectable } from '@nestjs/common';
import { inForce } from '../../domain/calendar/in-force';
import { designedCost } from '../../domain/costing';
import { netPriceFor, type PriceListKind } from '../../domain/pricing';
import { compareScenarios, type Outcome, type Scenario, type SoldItem } from '../../domain/what-if';
import type { Price } from '../../generated/prisma/client';
import { moneyText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { orRefuse } from '../../platform/problems';
import { allPrices, historyOf, loadBasis, stepsView, type LoadedBasis } from '../pricing';
import { readChange } from './read-changes';
import type {
  OutcomeView,
  ScenarioDto,
  SkippedItemView,
  WhatIfDto,
  WhatIfView,
} from './what-if.dto';

@Injectable()
export class WhatIfService {
  constructor(private readonly transactions: Transactions) {}

  /** Costs and margins of what is sold under each scenario. Reads only: nothing is changed. */
  reckon(dto: WhatIfDto): Promise<WhatIfView> {
    return this.transactions.read((tx) =>
      this.compare(tx, dto.scenarios, dto.list ?? 'counter', dto.itemIds),
    );
  }

  async compare(
    tx: Tx,
    scenarios: readonly ScenarioDto[],
    list: PriceListKind,
    itemIds?: readonly string[],
  ): Promise<WhatIfView> {
    const on = this.transactions.today().toString();
    const basis = await loadBasis(tx, on);
    const { sold, skipped } = soldItems(basis, await allPrices(tx, list), list, itemIds);
    const read = scenarios.map(({ name, changes }): Scenario => ({
      name,
      changes: changes.map((change) => readChange(change, basis)),
    }));
    const results = orRefuse(compareScenarios(basis, sold, read));
    const [unchanged] = results;
    return {
      list,
      on,
      skipped,
      scenarios: results.map(({ name, outcomes }) => ({
        name,
        outcomes: outcomes.map((outcome, index) =>
          outcomeView(outcome, unchanged?.outcomes[index] ?? outcome, basis),
        ),
      })),
    };
  }
}

interface Sold {
  readonly sold: SoldItem[];
  readonly skipped: SkippedItemView[];
}

/** What can be costed and, when it has a price, taxed today; the rest is named and left out. */
const soldItems = (
  basis: LoadedBasis,
  prices: readonly Price[],
  list: PriceListKind,
  itemIds: readonly string[] | undefined,
): Sold => {
  const sold: SoldItem[] = [];
  const skipped: SkippedItemView[] = [];
  for (const item of basis.items.values()) {
    const asked = itemIds?.includes(item.id) ?? (item.kind === 'piece' || item.kind === 'box');
    if (!asked || !item.active || !basis.recipes.has(item.id)) continue;
    const cost = designedCost(item.id, basis.costs);
    if (!cost.ok) {
      skipped.push({ itemId: item.id, itemName: item.name, reason: cost.refusal.detail });
      continue;
    }
    const history = historyOf(prices.filter((price) => price.itemId === item.id));
    const holding = item.vatClass === null ? undefined : inForce(history, basis.costs.day);
    sold.push({
      item: item.id,
      vatClass: item.vatClass ?? '',
      list,
      ...(holding ? { price: holding.price } : {}),
    });
  }
  return { sold, skipped };
};

const outcomeView = (outcome: Outcome, unchanged: Outcome, basis: LoadedBasis): OutcomeView => {
  const kept = unchanged.marginPercent
    ? orRefuse(netPriceFor(outcome.cost, { kind: 'margin', percent: unchanged.marginPercent }))
    : undefined;
  return {
    itemId: outcome.item,
    itemName: basis.items.get(outcome.item)?.name ?? outcome.item,
    cost: moneyText(outcome.cost),
    costChange: moneyText(outcome.cost.minus(unchanged.cost)),
    net: outcome.net?.toFixed(2) ?? null,
    marginPercent: outcome.marginPercent?.toFixed(2) ?? null,
    netToKeepMargin: kept?.toFixed(2) ?? null,
    waterfall: stepsView(outcome.entries),
  };
};
