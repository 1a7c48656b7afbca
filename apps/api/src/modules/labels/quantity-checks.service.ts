import { Injectable } from '@nestjs/common';
import { judgeBatch, limitsOf, type BatchTest } from '../../domain/quantity';
import { Decimal } from '../../domain/units';
import type { QuantityCheck } from '../../generated/prisma/client';
import { quantityText } from '../../platform/database/decimals';
import { Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { ProblemError } from '../../platform/problems';
import { namesOf } from './contact-decisions.queries';
import { lotToLabel } from './lot-facts';
import type { QuantityCheckView, WeighPacksDto } from './quantity-checks.dto';
import { say } from '../../domain/words/say';

type Result = Omit<
  QuantityCheckView,
  'id' | 'lotCode' | 'state' | 'nominalGrams' | 'weighedBy' | 'at'
>;

const resultOf = (test: BatchTest, nominalG: Decimal): Result => ({
  reasons: [...test.verdict.reasons],
  more: test.verdict.state === 'weigh_more' ? test.verdict.more : 0,
  toleratedErrorGrams: limitsOf(nominalG)?.errorG.toFixed(3) ?? null,
  weighed: test.weighed,
  meanGrams: test.meanG?.toFixed(3) ?? null,
  deviationGrams: test.deviationG?.toFixed(3) ?? null,
  belowT1: test.belowT1,
  belowT2: test.belowT2,
});

const view = (row: QuantityCheck, lotCode: string, weighedBy: string): QuantityCheckView => ({
  ...(row.result as unknown as Result),
  id: row.id,
  lotCode,
  state: row.state,
  nominalGrams: quantityText(row.nominalG),
  weighedBy,
  at: row.at.toISOString(),
});

const WEIGHT = /^\d{1,8}(\.\d{1,3})?$/;

/** @throws ProblemError that names each weight that is no decimal text */
const readWeights = (texts: readonly string[]): Decimal[] => {
  const wrong = texts.flatMap((text, index) =>
    WEIGHT.test(text)
      ? []
      : [{ pointer: `/netWeightsGrams/${index}`, message: say`must be grams, as "125.2"` }],
  );
  if (wrong.length === 0) return texts.map((text) => new Decimal(text));
  throw new ProblemError(
    'fields-not-valid',
    400,
    say`A weight is not right`,
    say`See "errors".`,
    wrong,
  );
};

/** The record that average-quantity law asks for: what was weighed, and what it says. */
@Injectable()
export class QuantityChecksService {
  constructor(private readonly transactions: Transactions) {}

  list(lotCode: string): Promise<QuantityCheckView[]> {
    return this.transactions.read(async (tx) => {
      const lot = await lotToLabel(tx, lotCode);
      const rows = await tx.quantityCheck.findMany({
        where: { lotId: lot.id },
        orderBy: [{ at: 'desc' }, { id: 'desc' }],
      });
      const names = await namesOf(tx, [...new Set(rows.map((row) => row.userId))]);
      return rows.map((row) => view(row, lotCode, names.get(row.userId) ?? ''));
    });
  }

  weigh(lotCode: string, dto: WeighPacksDto): Promise<QuantityCheckView> {
    const netWeightsG = readWeights(dto.netWeightsGrams);
    const nominalG = new Decimal(dto.nominalGrams);
    const { batchSize, destructive } = dto;
    return this.transactions.book(async (tx, by) => {
      const lot = await lotToLabel(tx, lotCode);
      const test = judgeBatch({ nominalG, batchSize, netWeightsG, destructive });
      const row = await tx.quantityCheck.create({
        data: {
          id: newId(),
          lotId: lot.id,
          nominalG: nominalG.toFixed(3),
          batchSize,
          destructive,
          netWeightsG: netWeightsG.map((weight) => weight.toFixed(3)),
          state: test.verdict.state,
          result: { ...resultOf(test, nominalG) },
          at: by.at,
          userId: by.userId,
        },
      });
      noteInJournal(by, {
        action: 'packs.weighed',
        subjectKind: 'lot',
        subjectId: lotCode,
        detail: { state: test.verdict.state, weighed: test.weighed },
      });
      return view(row, lotCode, by.userName);
    });
  }
}
