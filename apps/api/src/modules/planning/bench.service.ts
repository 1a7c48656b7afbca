import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/units';
import { Clock } from '../../platform/clock/clock';
import { decimalToDb, quantityText } from '../../platform/database/decimals';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, RefusalError } from '../../platform/problems';
import { openBatch } from '../batches';
import { loadLotsForUse, takeFromLot } from '../stock';
import { loadWorkshop } from '../workshop';
import type {
  PlannedBatchView,
  PlannedUseView,
  ReservationView,
  StartBatchesDto,
  StartedBatchesView,
  StartedBatchView,
} from './plan.dto';
import { showPlan } from './saved-plans.queries';
import { planningSettings } from './planning-settings';
import { findReservations, reservedOf } from './reservations.queries';
import { named, say } from '../../domain/words/say';

const MS_PER_HOUR = 3_600_000;

/** From plan to bench: batches are opened and the lots that they are to use are kept for them. */
@Injectable()
export class PlanBenchService {
  constructor(
    private readonly transactions: Transactions,
    private readonly clock: Clock,
  ) {}

  start(planId: string, dto: StartBatchesDto): Promise<StartedBatchesView> {
    return this.transactions.book(async (tx, by) => {
      const plan = await showPlan(tx, planId);
      const hours = dto.reservedHours ?? planningSettings(await loadWorkshop(tx)).reservationHours;
      const expiresAt = new Date(by.at.getTime() + hours * MS_PER_HOUR);
      const batches: StartedBatchView[] = [];
      for (const key of new Set(dto.keys)) {
        const planned = orNotFound(
          plan.batches.find((batch) => batch.key === key),
          'batch in this plan',
          key,
        );
        const started = plan.started.find((start) => start.key === key);
        if (started) {
          throw new RefusalError({
            code: 'already-exists',
            detail: say`${planned.itemName} of ${planned.day} is on the bench already, as batch ${started.batchCode}.`,
            facts: { key, batchCode: started.batchCode },
          });
        }
        batches.push(await this.startOne(tx, by, planId, planned, expiresAt));
      }
      return { batches };
    });
  }

  list(active: boolean): Promise<ReservationView[]> {
    return this.transactions.read((tx) =>
      findReservations(tx, this.clock.now(), active ? { active } : {}),
    );
  }

  /** Gives a lot free again before its hour. */
  release(id: string): Promise<ReservationView> {
    return this.transactions.book(async (tx, by) => {
      const row = orNotFound(await tx.reservation.findUnique({ where: { id } }), 'reservation', id);
      if (row.releasedAt === null) {
        await tx.reservation.update({ where: { id }, data: { releasedAt: by.at } });
        noteInJournal(by, {
          action: 'reservation.released',
          subjectKind: 'reservation',
          subjectId: id,
        });
      }
      const [view] = await findReservations(tx, by.at, { ids: [id] });
      return orNotFound(view, 'reservation', id);
    });
  }

  private async startOne(
    tx: Tx,
    by: By,
    planId: string,
    planned: PlannedBatchView,
    expiresAt: Date,
  ): Promise<StartedBatchView> {
    const { id, code } = await openBatch(tx, by, {
      itemId: planned.itemId,
      ...(planned.trays === null
        ? { plannedQuantity: planned.quantity }
        : { plannedTrays: planned.trays }),
    });
    await tx.plannedStart.create({ data: { planId, key: planned.key, batchId: id } });
    const fromLots = planned.uses.filter(({ source }) => source === 'lot');
    const ids = await this.reserve(tx, by, id, fromLots, expiresAt);
    noteInJournal(by, {
      action: 'plan.started',
      subjectKind: 'batch',
      subjectId: code,
      detail: { plan: planId, key: planned.key, reserved: ids.length },
    });
    return {
      key: planned.key,
      batchId: id,
      batchCode: code,
      reservations: await findReservations(tx, by.at, { ids }),
      notReserved: planned.uses.filter(({ source }) => source !== 'lot'),
    };
  }

  /** A lot that is held, spent or kept for another batch meanwhile refuses the whole start. */
  private async reserve(
    tx: Tx,
    by: By,
    batchId: string,
    uses: readonly PlannedUseView[],
    expiresAt: Date,
  ): Promise<string[]> {
    const lots = await loadLotsForUse(
      tx,
      uses.map(({ from }) => from ?? ''),
    );
    const ids: string[] = [];
    for (const use of uses) {
      const lot = orNotFound(lots.get(use.from ?? ''), 'lot', use.from ?? '');
      const quantity = new Decimal(use.quantity);
      takeFromLot(lot, quantity, by.today);
      const free = lot.onHand.quantity.minus(await reservedOf(tx, lot.id, batchId, by.at));
      if (free.lessThan(quantity)) {
        throw new RefusalError({
          code: 'not-enough-on-hand',
          detail: say`Of lot ${lot.code} only ${quantityText(free)} ${named(lot.unit)} aren’t kept for other batches. Plan again.`,
          facts: { lotCode: lot.code, free: free.toFixed(), asked: quantity.toFixed() },
        });
      }
      const id = newId();
      await tx.reservation.create({
        data: {
          id,
          lotId: lot.id,
          batchId,
          quantity: decimalToDb(quantity),
          expiresAt,
          at: by.at,
          userId: by.userId,
        },
      });
      ids.push(id);
    }
    return ids;
  }
}
