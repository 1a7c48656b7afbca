import { Injectable } from '@nestjs/common';
import { inForce } from '../../domain/calendar/in-force';
import { designedCost, totalCost } from '../../domain/costing';
import type { PriceListKind } from '../../domain/pricing';
import { breakEvenUnits, quote, splitShown, vatRateOn } from '../../domain/pricing';
import { Decimal } from '../../domain/units';
import type { Item } from '../../generated/prisma/client';
import { moneyText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import { itemCostView } from './costs.view';
import { loadBasis, type LoadedBasis } from './cost-basis.queries';
import type {
  BreakEvenQuery,
  BreakEvenView,
  ItemPriceView,
  ListedPriceView,
  PriceQuery,
  SetPriceDto,
} from './prices.dto';
import { historyOf, insertPrice, listedPriceView, pricesOf } from './prices.repository';
import { currentPriceView, pricedView, type Judged } from './prices.view';
import { endingRule, priceRule, pricingSettings, targetOf } from './pricing-settings';
import { named, say } from '../../domain/words/say';

/** The VAT rate of an item on a day. @throws RefusalError when its class or its rate is missing */
export const vatOf = (item: Item, basis: LoadedBasis, on: string): Decimal => {
  if (item.vatClass === null) {
    throw new RefusalError({
      code: 'vat-rate-missing',
      detail: say`${item.name} has no product class for VAT. Set it on the item.`,
      facts: { item: item.name },
    });
  }
  return orRefuse(vatRateOn(basis.vat, item.vatClass, on));
};

@Injectable()
export class PricesService {
  constructor(private readonly transactions: Transactions) {}

  /** Cost as designed, the price that its target asks for, and the one that holds. */
  price(id: string, query: PriceQuery): Promise<ItemPriceView> {
    return this.transactions.read(async (tx) => {
      const list = query.list ?? 'counter';
      const on = this.dayOf(query);
      const basis = await loadBasis(tx, on);
      const item = orNotFound(basis.items.get(id), 'item', id);
      const unitCost = orRefuse(designedCost(id, basis.costs));
      const cost = totalCost(unitCost);
      const settings = pricingSettings(basis.workshop);
      const vatPercent = vatOf(item, basis, on);
      const judged: Judged = { item, cost, vatPercent, settings };
      const rule = priceRule(item.settings);
      const target = targetOf(rule, list);
      const quoted = orRefuse(
        quote(cost, { list, target, vatPercent, endings: endingRule(settings) }),
      );
      const history = historyOf(await pricesOf(tx, id, list));
      return {
        list,
        cost: itemCostView(item, unitCost, on, basis.items),
        rule,
        exactNet: moneyText(quoted.exactNet),
        proposed: pricedView(quoted, judged),
        current: currentPriceView(history, inForce(history, on), list, judged),
      };
    });
  }

  history(id: string, list: PriceListKind | undefined): Promise<ListedPriceView[]> {
    return this.transactions.read(async (tx) => {
      orNotFound(await tx.item.findUnique({ where: { id } }), 'item', id);
      return this.showHistory(tx, id, list);
    });
  }

  setPrice(id: string, dto: SetPriceDto): Promise<ListedPriceView> {
    return this.transactions.book(async (tx, by) => {
      const item = orNotFound(await tx.item.findUnique({ where: { id } }), 'item', id);
      if (item.kind !== 'piece' && item.kind !== 'box') {
        throw new RefusalError({
          code: 'not-valid',
          detail: say`${item.name} is ${named(item.kind)} and isn’t sold: only pieces and boxes have a price.`,
        });
      }
      const price = await insertPrice(tx, by, id, dto);
      noteInJournal(by, {
        action: 'price.set',
        subjectKind: 'item',
        subjectId: item.name,
        detail: { ...dto },
      });
      const shown = await this.showHistory(tx, id, dto.list);
      return orNotFound(
        shown.find((row) => row.id === price.id),
        'price',
        price.id,
      );
    });
  }

  /** How many must be sold at the price that holds until a fixed cost is earned. */
  breakEven(id: string, query: BreakEvenQuery): Promise<BreakEvenView> {
    return this.transactions.read(async (tx) => {
      const list = query.list ?? 'counter';
      const on = this.dayOf(query);
      const basis = await loadBasis(tx, on);
      const item = orNotFound(basis.items.get(id), 'item', id);
      // Overhead is what the fixed cost stands for, so it isn't charged a second time.
      const unitCost = orRefuse(designedCost(id, basis.costs));
      const variableCost = totalCost(unitCost.filter(({ category }) => category !== 'overhead'));
      const holding = inForce(historyOf(await pricesOf(tx, id, list)), on);
      const { price } = orNotFound(holding, say`price on the ${named(list)} list for`, item.name);
      const { net } = splitShown(price, list, vatOf(item, basis, on));
      const units = orRefuse(breakEvenUnits(new Decimal(query.fixedCost), net, variableCost));
      return {
        units: units.toFixed(0),
        variableCost: moneyText(variableCost),
        netPrice: moneyText(net),
      };
    });
  }

  private dayOf(query: PriceQuery): string {
    return query.on ?? this.transactions.today().toString();
  }

  private async showHistory(
    tx: Tx,
    id: string,
    list: PriceListKind | undefined,
  ): Promise<ListedPriceView[]> {
    const today = this.transactions.today().toString();
    const prices = await pricesOf(tx, id, list);
    const holding = (of: string): string | undefined =>
      inForce(historyOf(prices.filter((price) => price.list === of)), today)?.id;
    const held: Readonly<Record<string, string | undefined>> = {
      counter: holding('counter'),
      trade: holding('trade'),
    };
    return prices.map((price) => listedPriceView(price, held[price.list])).reverse();
  }
}
