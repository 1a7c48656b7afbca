import { Injectable } from '@nestjs/common';
import { inForce } from '../../domain/calendar/in-force';
import { designedCost, totalCost } from '../../domain/costing';
import type { PriceListKind } from '../../domain/pricing';
import { priceList, type PriceListView } from '../../documents';
import type { Item, Price } from '../../generated/prisma/client';
import { Transactions } from '../../platform/database/transactions';
import { optionalDecimalFromDb } from '../../platform/database/decimals';
import { RefusalError } from '../../platform/problems';
import { PaperContexts } from '../papers';
import { loadWorkshop } from '../workshop';
import { loadBasis, type LoadedBasis } from './cost-basis.queries';
import type {
  PriceListAnswer,
  PriceListPdfQuery,
  PriceListRowView,
  PriceQuery,
} from './prices.dto';
import { allPrices, historyOf } from './prices.repository';
import { vatOf } from './prices.service';
import { currentPriceView } from './prices.view';
import { pricingSettings } from './pricing-settings';

const GROUPS = {
  en: { box: 'Boxes', piece: 'Loose pieces' },
  fr: { box: 'Boîtes', piece: 'À la pièce' },
} as const;

@Injectable()
export class PriceListService {
  constructor(
    private readonly transactions: Transactions,
    private readonly contexts: PaperContexts,
  ) {}

  /** Every piece and box that is sold, with its price, what it costs and what that leaves. */
  list(query: PriceQuery): Promise<PriceListAnswer> {
    return this.transactions.read(async (tx) => {
      const on = query.on ?? this.transactions.today().toString();
      const list = query.list ?? 'counter';
      const basis = await loadBasis(tx, on);
      const prices = await allPrices(tx, list);
      const sold = [...basis.items.values()]
        .filter(({ kind, active }) => active && (kind === 'piece' || kind === 'box'))
        .sort((a, b) => a.kind.localeCompare(b.kind) || a.name.localeCompare(b.name));
      return { list, on, rows: sold.map((item) => rowOf(item, prices, list, basis, on)) };
    });
  }

  async pdf(query: PriceListPdfQuery): Promise<Buffer> {
    const answer = await this.list(query);
    return this.transactions.read(async (tx) => {
      const context = await this.contexts.of(tx, query);
      const { currency } = await loadWorkshop(tx);
      const view: PriceListView = {
        kind: answer.list,
        validFrom: answer.on,
        currency,
        groups: groupsOf(answer, context.language),
      };
      return priceList(view, context);
    });
  }
}

const rowOf = (
  item: Item,
  prices: readonly Price[],
  list: PriceListKind,
  basis: LoadedBasis,
  on: string,
): PriceListRowView => {
  const designed = designedCost(item.id, basis.costs);
  const cost = designed.ok ? totalCost(designed.value) : undefined;
  const history = historyOf(prices.filter(({ itemId }) => itemId === item.id));
  const head = {
    itemId: item.id,
    itemName: item.name,
    kind: item.kind,
    netWeightGrams: optionalDecimalFromDb(item.nominalMassG)?.toFixed(3) ?? null,
    cost: cost?.toFixed(4) ?? null,
  };
  const problem = designed.ok ? null : designed.refusal.detail;
  try {
    const settings = pricingSettings(basis.workshop);
    const judged = { item, cost, vatPercent: vatOf(item, basis, on), settings };
    return {
      ...head,
      current: currentPriceView(history, inForce(history, on), list, judged),
      problem,
    };
  } catch (error) {
    if (!(error instanceof RefusalError)) throw error;
    return { ...head, current: null, problem: error.message };
  }
};

const groupsOf = (answer: PriceListAnswer, language: 'en' | 'fr'): PriceListView['groups'] =>
  (['box', 'piece'] as const).flatMap((kind): PriceListView['groups'] => {
    const rows = answer.rows.flatMap((row) => {
      if (row.kind !== kind || !row.current) return [];
      const { current, netWeightGrams } = row;
      const due = current.unitPriceDuty === 'required' && answer.list === 'counter';
      return [
        {
          name: row.itemName,
          content: netWeightGrams === null ? '' : `${netWeightGrams.replace(/\.?0+$/, '')} g`,
          price: answer.list === 'counter' ? current.gross : current.net,
          pricePerKg: due ? current.pricePerKg : null,
          vatPercent: current.vatPercent.replace(/\.?0+$/, ''),
        },
      ];
    });
    return rows.length === 0 ? [] : [{ name: GROUPS[language][kind], rows }];
  });
