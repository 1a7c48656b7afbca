import { Injectable } from '@nestjs/common';
import {
  recallLetters,
  recallList,
  recallNotice,
  type RecallView as RecallPaper,
} from '../../documents';
import { type Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { PaperContexts } from '../papers';
import type { RecallPaperQuery } from './recall-papers.dto';
import type { RecallView, ScopeLotView, ScopeSaleView } from './recalls.dto';
import { RecallsService } from './recalls.service';

type Sale = RecallPaper['counter'][number];

const saleOf = (sale: ScopeSaleView): Sale => ({
  dispatchCode: sale.dispatch,
  sentOn: sale.sentOn,
  lotCode: sale.lot,
  itemName: sale.itemName,
  quantity: sale.quantity,
  unit: sale.unit,
});

const dateOf = (lot: ScopeLotView) => ({
  date: lot.useBy ?? lot.bestBefore,
  dateKind: lot.useBy === null ? ('best_before' as const) : ('use_by' as const),
});

/** The case in the shape of its papers. */
const paperOf = (view: RecallView): RecallPaper => ({
  code: view.code,
  mode: view.mode === 'rehearsal' ? 'rehearsal' : 'real',
  reason: view.reason,
  openedAt: new Date(view.openedAt),
  askedAt: new Date(view.scope.askedAt),
  lots: view.scope.lots.map((lot) => ({
    code: lot.code,
    itemName: lot.itemName,
    quantity: lot.madeQuantity,
    unit: lot.unit,
    ...dateOf(lot),
  })),
  customers: view.customers.map((customer) => ({
    name: customer.name,
    addressLines: customer.addressLines,
    phone: customer.phone,
    email: customer.email,
    sales: view.scope.sales.filter((sale) => sale.customerId === customer.id).map(saleOf),
  })),
  counter: view.scope.sales.filter((sale) => sale.customerId === null).map(saleOf),
  onHand: view.scope.lots
    .filter((lot) => Number(lot.onHandQuantity) > 0)
    .map((lot) => ({
      lotCode: lot.code,
      itemName: lot.itemName,
      quantity: lot.onHandQuantity,
      unit: lot.unit,
      placeName: lot.place,
      held: lot.held,
    })),
  ended: view.scope.ends.map((end) => ({
    what: end.what,
    lotCode: end.lot,
    quantity: end.quantity,
    unit: end.unit,
  })),
});

/** What buyers can hold in their hands. */
const SOLD = new Set(['box', 'piece']);

const ADVICE = {
  en: 'Please don’t eat it. Bring it back to us or throw it away: we refund it without a receipt.',
  fr: 'Ne le consommez pas. Rapportez-le ou jetez-le : nous le remboursons sans ticket.',
};

@Injectable()
export class RecallPapersService {
  constructor(
    private readonly transactions: Transactions,
    private readonly contexts: PaperContexts,
    private readonly recalls: RecallsService,
  ) {}

  list(code: string, query: RecallPaperQuery): Promise<Buffer> {
    return this.print(code, query, (view, context) => recallList(paperOf(view), context));
  }

  letters(code: string, query: RecallPaperQuery): Promise<Buffer> {
    return this.print(code, query, (view, context) => recallLetters(paperOf(view), context));
  }

  /** For the door: only goods that buyers can have, in words that a person may set. */
  notice(code: string, query: RecallPaperQuery): Promise<Buffer> {
    return this.print(code, query, (view, context) =>
      recallNotice(
        {
          code: view.code,
          mode: view.mode === 'rehearsal' ? 'rehearsal' : 'real',
          reason: query.reason ?? view.reason,
          advice: query.advice ?? ADVICE[context.language],
          products: view.scope.lots
            .filter((lot) => SOLD.has(lot.itemKind))
            .map((lot) => ({ itemName: lot.itemName, lotMark: `L${lot.code}`, ...dateOf(lot) })),
        },
        context,
      ),
    );
  }

  private print(
    code: string,
    query: RecallPaperQuery,
    draw: (view: RecallView, context: Awaited<ReturnType<PaperContexts['of']>>) => Promise<Buffer>,
  ): Promise<Buffer> {
    return this.transactions.read(async (tx: Tx) =>
      draw(await this.recalls.view(tx, code), await this.contexts.of(tx, query)),
    );
  }
}
