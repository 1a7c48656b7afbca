import { Injectable } from '@nestjs/common';
import { checkUsable } from '../../domain/stock';
import { Decimal } from '../../domain/units';
import { Transactions } from '../../platform/database/transactions';
import { loadLotForUse } from '../stock';
import { loadBatchToCompare } from './batch-to-compare.queries';
import { compareLot } from './compare-lot';
import type { SubstitutionDto, SubstitutionView } from './substitutions.dto';
import { substitutionView } from './substitutions.view';

/** Compares a lot with what a batch is meant to be made of, before it is drawn. */
@Injectable()
export class SubstitutionsService {
  constructor(private readonly transactions: Transactions) {}

  compare(batchId: string, dto: SubstitutionDto): Promise<SubstitutionView> {
    return this.transactions.read(async (tx) => {
      const batch = await loadBatchToCompare(tx, batchId);
      const lot = await loadLotForUse(tx, dto.lotCode);
      const compared = await compareLot(tx, {
        batch,
        lot,
        insteadOf: dto.itemId ?? null,
        quantity: dto.quantity === undefined ? null : new Decimal(dto.quantity),
      });
      const usable = checkUsable(lot, this.transactions.today());
      return substitutionView(compared, lot, usable.ok ? null : usable.refusal.detail);
    });
  }
}
