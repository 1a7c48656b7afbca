import { Injectable } from '@nestjs/common';
import { inForce } from '../../domain/calendar/in-force';
import {
  compareCosts,
  designedCost,
  scaleCost,
  totalCost,
  unitCostOf,
  type CostEntry,
} from '../../domain/costing';
import { marginPercent, markUpPercent, splitShown, type PriceListKind } from '../../domain/pricing';
import type { Decimal } from '../../domain/units';
import type { Item } from '../../generated/prisma/client';
import { dayFromDb } from '../../platform/database/days';
import { moneyText, quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { orNotFound, orRefuse } from '../../platform/problems';
import { loadBasis, type LoadedBasis } from './cost-basis.queries';
import type { CostComparisonView, ItemCostView, LotCostView, MarginView } from './costs.dto';
import { itemCostView, perOf, stepsView } from './costs.view';
import { loadMadeCosts } from './made-cost.queries';
import { historyOf, pricesOf } from './prices.repository';
import { vatOf } from './prices.service';
import { warningText } from './prices.view';
import { pricingSettings } from './pricing-settings';

/** Made lots that the watch on margins looks back at. */
const WATCHED_LOTS = 50;
const LISTS: readonly PriceListKind[] = ['counter', 'trade'];

@Injectable()
export class CostsService {
  constructor(private readonly transactions: Transactions) {}

  /** Cost of an item as it is designed, with today's replacement prices. */
  designed(id: string): Promise<ItemCostView> {
    return this.transactions.read(async (tx) => {
      const on = this.transactions.today().toString();
      const basis = await loadBasis(tx, on);
      const item = orNotFound(basis.items.get(id), 'item', id);
      return itemCostView(item, orRefuse(designedCost(id, basis.costs)), on, basis.items);
    });
  }

  /** Cost of a lot as it was made, beside its design, with what it earns at today's prices. */
  made(code: string): Promise<LotCostView> {
    return this.transactions.read(async (tx) => {
      const on = this.transactions.today().toString();
      return this.lotCost(tx, code, await loadBasis(tx, on), on);
    });
  }

  /** The newest lots of pieces and boxes whose margin lies under the floor. */
  thinMargins(): Promise<LotCostView[]> {
    return this.transactions.read(async (tx) => {
      const on = this.transactions.today().toString();
      const basis = await loadBasis(tx, on);
      const priced = await tx.price.findMany({ distinct: ['itemId'], select: { itemId: true } });
      const lots = await tx.lot.findMany({
        where: { itemId: { in: priced.map(({ itemId }) => itemId) }, outputRole: 'product' },
        orderBy: [{ madeOn: 'desc' }, { id: 'desc' }],
        take: WATCHED_LOTS,
        select: { code: true },
      });
      const costs: LotCostView[] = [];
      for (const { code } of lots) costs.push(await this.lotCost(tx, code, basis, on));
      return costs.filter(({ margins }) => margins.some(({ warning }) => warning !== null));
    });
  }

  private async lotCost(
    tx: Tx,
    code: string,
    basis: LoadedBasis,
    on: string,
  ): Promise<LotCostView> {
    const lot = orNotFound(await tx.lot.findUnique({ where: { code } }), 'lot', code);
    const item = orNotFound(basis.items.get(lot.itemId), 'item', lot.itemId);
    const { costs, assumedMinutes } = await loadMadeCosts(tx, [lot.id]);
    const whole = orNotFound(costs.get(lot.id), 'cost of lot', code);
    const { per, factor } = perOf(item.unit);
    const entries = whole.quantity.isZero() ? [] : scaleCost(unitCostOf(whole), factor);
    return {
      lotCode: code,
      itemId: item.id,
      itemName: item.name,
      per,
      madeQuantity: quantityText(lot.madeQuantity),
      madeOn: dayFromDb(lot.madeOn),
      lotCost: totalCost(whole.entries).toFixed(2),
      cost: moneyText(totalCost(entries)),
      waterfall: stepsView(entries),
      comparison: this.comparison(item, entries, factor, basis),
      margins: await this.margins(tx, item, totalCost(entries), basis, on),
      assumedMinutes: [...assumedMinutes],
    };
  }

  /** An item that was bought, or a recipe that misses a price today, has no design to compare. */
  private comparison(
    item: Item,
    made: readonly CostEntry[],
    factor: Decimal,
    basis: LoadedBasis,
  ): CostComparisonView[] {
    const designed = designedCost(item.id, basis.costs);
    if (!designed.ok || !basis.recipes.has(item.id)) return [];
    return compareCosts(scaleCost(designed.value, factor), made).map((row) => ({
      category: row.category,
      part: row.part,
      designed: moneyText(row.designed),
      made: moneyText(row.made),
      difference: moneyText(row.difference),
    }));
  }

  private async margins(
    tx: Tx,
    item: Item,
    cost: Decimal,
    basis: LoadedBasis,
    on: string,
  ): Promise<MarginView[]> {
    const prices = await pricesOf(tx, item.id);
    return LISTS.flatMap((list): MarginView[] => {
      const holding = inForce(historyOf(prices.filter((price) => price.list === list)), on);
      if (!holding) return [];
      const { net } = splitShown(holding.price, list, vatOf(item, basis, on));
      return [
        {
          list,
          netPrice: moneyText(net),
          marginPercent: marginPercent(net, cost)?.toFixed(2) ?? '0.00',
          markUpPercent: markUpPercent(net, cost)?.toFixed(2) ?? null,
          warning: warningText(net, cost, pricingSettings(basis.workshop)),
        },
      ];
    });
  }
}
