import { Injectable } from '@nestjs/common';
import { purchasePriceHistory, stockReport } from '../../domain/stock-value';
import { Clock } from '../../platform/clock/clock';
import { moneyText, quantityText } from '../../platform/database/decimals';
import { Transactions } from '../../platform/database/transactions';
import { orNotFound } from '../../platform/problems';
import type { PurchasePriceView, StockValueQuery, StockValueView } from './stock-value.dto';
import { loadPurchases, loadStock } from './stock-value.queries';

const SLOW_AFTER_DAYS = 60;
const EXPIRING_WITHIN_DAYS = 14;

@Injectable()
export class StockValueService {
  constructor(
    private readonly transactions: Transactions,
    private readonly clock: Clock,
  ) {}

  /** What lies in the store and what it is worth, with what goes nowhere and what runs out. */
  report(query: StockValueQuery): Promise<StockValueView> {
    return this.transactions.read(async (tx) => {
      const on = this.transactions.today().toString();
      const lots = await loadStock(tx, this.clock.now(), query.kind ?? null);
      const report = stockReport(lots, on, {
        slowAfterDays: query.slowAfterDays ?? SLOW_AFTER_DAYS,
        expiringWithinDays: query.expiringWithinDays ?? EXPIRING_WITHIN_DAYS,
      });
      const byId = new Map(lots.map((lot) => [lot.lot, lot]));
      const nameOf = new Map(lots.map((lot) => [lot.item, lot.itemName]));
      return {
        on,
        value: moneyText(report.value),
        slowValue: moneyText(report.slowValue),
        expiringValue: moneyText(report.expiringValue),
        expiredValue: moneyText(report.expiredValue),
        heldValue: moneyText(report.heldValue),
        lots: report.lines.map((line) => {
          const lot = orNotFound(byId.get(line.lot), 'lot', line.lot);
          return {
            lotCode: lot.code,
            itemId: lot.item,
            itemName: lot.itemName,
            kind: lot.kind,
            unit: lot.unit,
            quantity: quantityText(line.quantity),
            reservedQuantity: quantityText(lot.reserved),
            value: moneyText(line.value),
            lastDay: line.lastDay ?? null,
            daysLeft: line.daysLeft ?? null,
            idleDays: line.idleDays,
            slow: line.slow,
            held: line.held,
            state: line.state,
          };
        }),
        items: report.byItem.map(({ item, quantity, value }) => ({
          itemId: item,
          itemName: nameOf.get(item) ?? '',
          quantity: quantityText(quantity),
          value: moneyText(value),
        })),
      };
    });
  }

  /** What an item cost whenever it was bought. */
  purchases(itemId: string): Promise<PurchasePriceView[]> {
    return this.transactions.read(async (tx) => {
      orNotFound(await tx.item.findUnique({ where: { id: itemId } }), 'item', itemId);
      return purchasePriceHistory(await loadPurchases(tx, itemId)).map((point) => ({
        day: point.day,
        supplier: point.supplier,
        quantity: quantityText(point.quantity),
        price: moneyText(point.price),
        unitPrice: moneyText(point.unitPrice),
        changePercent: point.changePercent?.toFixed(2) ?? null,
      }));
    });
  }
}
