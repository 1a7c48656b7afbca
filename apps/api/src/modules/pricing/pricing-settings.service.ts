import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/units';
import { priceWithEnding, netPriceFor } from '../../domain/pricing';
import { Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import { refuseIfStale } from '../../platform/requests/stale';
import { loadWorkshop } from '../workshop';
import { endingRule, priceRule, pricingSettings, targetOf, withKey } from './pricing-settings';
import type {
  PriceRuleDto,
  PriceRuleView,
  PricingSettingsDto,
  PricingSettingsView,
} from './pricing-settings.dto';
import { say } from '../../domain/words/say';

const DECIMAL = /^\d{1,6}(\.\d{1,2})?$/;

@Injectable()
export class PricingSettingsService {
  constructor(private readonly transactions: Transactions) {}

  get(): Promise<PricingSettingsView> {
    return this.transactions.inTransaction(async (tx) => pricingSettings(await loadWorkshop(tx)));
  }

  change(seen: number, dto: PricingSettingsDto): Promise<PricingSettingsView> {
    return this.transactions.book(async (tx, by) => {
      const before = await loadWorkshop(tx);
      refuseIfStale('workshop', seen, before.version);
      if (!dto.endings.every((ending) => DECIMAL.test(ending))) {
        throw new RefusalError({
          code: 'price-endings-unusable',
          detail: say`A price ending is an amount as text, as "0.90".`,
        });
      }
      const shown = { ...dto, version: before.version + 1 };
      orRefuse(priceWithEnding(new Decimal(1), endingRule(shown)));
      const floor = new Decimal(dto.marginFloorPercent);
      orRefuse(netPriceFor(new Decimal(1), { kind: 'margin', percent: floor }));
      const after = await tx.workshop.update({
        where: { id: 1 },
        data: { settings: withKey(before.settings, 'pricing', dto), version: { increment: 1 } },
      });
      noteInJournal(by, {
        action: 'pricing-settings.changed',
        subjectKind: 'workshop',
        subjectId: after.name,
        detail: { ...dto },
      });
      return pricingSettings(after);
    });
  }

  /** What an item is to earn on each list. */
  changeRule(id: string, seen: number, dto: PriceRuleDto): Promise<PriceRuleView> {
    return this.transactions.book(async (tx, by) => {
      const item = orNotFound(await tx.item.findUnique({ where: { id } }), 'item', id);
      refuseIfStale('item', seen, item.version);
      for (const list of ['counter', 'trade'] as const) {
        orRefuse(netPriceFor(new Decimal(1), targetOf(dto, list)));
      }
      const after = await tx.item.update({
        where: { id },
        data: { settings: withKey(item.settings, 'pricing', dto), version: { increment: 1 } },
      });
      noteInJournal(by, {
        action: 'price-rule.changed',
        subjectKind: 'item',
        subjectId: item.name,
        detail: { ...dto },
      });
      return priceRule(after.settings);
    });
  }
}
