import { Injectable } from '@nestjs/common';
import { checkMouldUse, checkPointOf, judge } from '../../domain/making';
import { Decimal } from '../../domain/units';
import { type By, Transactions } from '../../platform/database/transactions';
import type { Tx } from '../../platform/database/prisma';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, orRefuse, RefusalError, refuseImpossible } from '../../platform/problems';
import { placeHolds } from '../stock';
import { type BatchHead, loadBatchHead, requireOpen } from './batch-head.queries';
import type { LossDto, MouldUseDto, ReadingDto } from './bench.dto';
import type { LossView, MouldUseView, ReadingView } from './bench.view';
import { bookLosses } from './bookings.repository';
import { loadContents } from './contents.queries';
import { drawnLotId } from './count-outputs';
import { loadMouldForUse } from './mould-use.queries';
import { deviationInWords, loadChecks } from './readings.queries';
import { lossView, mouldUseView, readingView } from './batch-parts';
import { say } from '../../domain/words/say';

/** What is booked at the bench between a batch's opening and its end. */
@Injectable()
export class BenchService {
  constructor(private readonly transactions: Transactions) {}

  /**
   * Readings are taken while a batch is open, and of what it made after: a water activity that is
   * measured on the next day puts the lots on hold when it is out of its limits.
   */
  read(batchId: string, dto: ReadingDto): Promise<ReadingView> {
    refuseImpossible([{ pointer: '/value', ...dto }]);
    return this.transactions.book(async (tx, by) => {
      const head = await loadBatchHead(tx, by, batchId);
      const check = checkPointOf(await loadChecks(tx, head), dto);
      const verdict = judge(new Decimal(dto.value), check);
      const reading = await tx.reading.create({
        data: {
          id: newId(),
          batchId,
          measure: dto.measure,
          value: dto.value,
          low: check.low?.toFixed() ?? null,
          high: check.high?.toFixed() ?? null,
          verdict,
          step: check.step,
          instrument: dto.instrument ?? null,
          correctiveAction: dto.correctiveAction ?? null,
          at: by.at,
          userId: by.userId,
        },
        include: { withdrawal: true },
      });
      if (verdict === 'low' || verdict === 'high') {
        const reason = deviationInWords(head.code, { ...reading, verdict });
        await this.holdOutputs(tx, by, head, reading.id, reason);
      }
      noteInJournal(by, {
        action: 'batch.read',
        subjectKind: 'batch',
        subjectId: head.code,
        detail: { measure: dto.measure, value: dto.value, verdict },
      });
      return readingView(reading);
    });
  }

  private async holdOutputs(
    tx: Tx,
    by: By,
    head: BatchHead,
    causeId: string,
    reason: string,
  ): Promise<void> {
    const outputs = await tx.lot.findMany({
      where: { batchId: head.id, takenBackAt: null },
      select: { id: true },
    });
    const holds = outputs.map(({ id }) => ({
      lotId: id,
      kind: 'deviation' as const,
      reason,
      causeId,
    }));
    await placeHolds(tx, by, holds);
  }

  useMould(batchId: string, dto: MouldUseDto): Promise<MouldUseView> {
    return this.transactions.book(async (tx, by) => {
      const head = await loadBatchHead(tx, by, batchId);
      requireOpen(head);
      if (head.kind !== 'cast') {
        throw new RefusalError({
          code: 'batch-kind-unfit',
          detail: say`Batch ${head.code} is not a casting. Moulds are booked where pieces are cast.`,
        });
      }
      const mould = await loadMouldForUse(tx, dto.mouldTag, head);
      const filling = { ...dto, rejectCavities: dto.rejectCavities ?? [] };
      orRefuse(checkMouldUse(mould, filling, mould.recipeDesignId));
      const use = await tx.mouldUse.create({
        data: {
          id: newId(),
          batchId,
          mouldId: mould.id,
          cavitiesFilled: filling.cavitiesFilled,
          rejectCavities: filling.rejectCavities,
          at: by.at,
          userId: by.userId,
        },
        include: { mould: { include: { design: true } }, withdrawal: true },
      });
      noteInJournal(by, {
        action: 'batch.mould-used',
        subjectKind: 'batch',
        subjectId: head.code,
        detail: { mould: dto.mouldTag, filled: dto.cavitiesFilled },
      });
      return mouldUseView(use);
    });
  }

  /** A loss that was weighed along the way: steam, what the strained infusion held back, scrapings. */
  lose(batchId: string, dto: LossDto): Promise<LossView> {
    return this.transactions.book(async (tx, by) => {
      const head = await loadBatchHead(tx, by, batchId);
      requireOpen(head);
      const lotId = drawnLotId(await loadContents(tx, batchId), dto.lotCode);
      const massG = new Decimal(dto.massGrams);
      const note = dto.note ?? null;
      const [id] = await bookLosses(tx, by, [{ batchId, kind: dto.kind, massG, lotId, note }]);
      noteInJournal(by, {
        action: 'batch.lost',
        subjectKind: 'batch',
        subjectId: head.code,
        detail: { kind: dto.kind, massGrams: dto.massGrams, lot: dto.lotCode ?? null },
      });
      const booked = await tx.batchLoss.findUnique({
        where: { id: id ?? '' },
        include: { lot: { select: { code: true } }, reversedBy: { select: { id: true } } },
      });
      return lossView(orNotFound(booked, 'loss', id ?? ''));
    });
  }
}
