import { Injectable } from '@nestjs/common';
import { Temporal } from 'temporal-polyfill';
import { Clock } from '../clock/clock';
import { findReplay } from '../idempotency/replay';
import type { JournalLine } from '../journal/journal';
import { unlessStopped } from '../long-work/long-work';
import { closeBooking } from './close-booking';
import {
  type Actor,
  currentActor,
  currentClaim,
  type IdempotencyClaim,
} from '../requests/request-context';
import { isConflict } from './conflicts';
import { DatabaseService } from './database.service';
import type { Tx } from './prisma';
import { Turnstile } from './turnstile';

/** Who books, and the one instant and workshop day that everything in the transaction carries. */
export interface By extends Actor {
  readonly at: Date;
  readonly today: Temporal.PlainDate;
  /** What the journal is going to say of the booking. */
  readonly journal: JournalLine[];
}

const MAX_ATTEMPTS = 12;
/** After so many lost attempts a transaction runs alone: long ones would starve among short ones. */
const PATIENT_ATTEMPTS = 3;
const FIRST_PAUSE_MS = 4;

/** Full jitter: a random pause below a bound that doubles up to a quarter of a second. */
const pause = (attempt: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, Math.random() * Math.min(250, FIRST_PAUSE_MS * 2 ** attempt));
  });

/**
 * The one transaction runner. Serializable; a transaction that lost against another is run again
 * from its start, so `work` must touch nothing but `tx`.
 */
@Injectable()
export class Transactions {
  private readonly turnstile = new Turnstile();

  constructor(
    private readonly database: DatabaseService,
    private readonly clock: Clock,
  ) {}

  /** Runs a change. @throws whatever `work` throws, after everything is rolled back. */
  async inTransaction<T>(work: (tx: Tx) => Promise<T>): Promise<T> {
    for (let attempt = 1; ; attempt += 1) {
      try {
        return await this.turnstile.pass(attempt > PATIENT_ATTEMPTS, () =>
          this.database.client.$transaction(work, {
            isolationLevel: 'Serializable',
            maxWait: 15_000,
            timeout: 60_000,
          }),
        );
      } catch (error) {
        if (!isConflict(error) || attempt >= MAX_ATTEMPTS) throw error;
        await pause(attempt);
      }
    }
  }

  /**
   * Runs a booking by the signed-in person. What `work` returns is the answer; under an
   * Idempotency-Key the answer is stored in the same transaction, where the key's uniqueness lets
   * only one booking of it commit, and a repeat of the request gets the answer back.
   *
   * A key is looked up only when a booking failed, as one that was sent twice does at the latest at
   * its end: hardly any is. Never inside the transaction: every booking would read the page of the
   * index that every other one writes, and serializable transactions would undo each other.
   */
  async book<T extends object>(work: (tx: Tx, by: By) => Promise<T>): Promise<T> {
    const claim = currentClaim();
    try {
      return await this.inTransaction(async (tx) => {
        const by = this.by();
        const answer = await work(tx, by);
        await closeBooking(tx, by, claim, answer);
        return answer;
      });
    } catch (error) {
      const earlier = await this.replayOf(claim);
      if (earlier !== undefined) return earlier as T;
      throw error;
    }
  }

  /**
   * A booking with slow work before it, as drawing a PDF: `prepare` runs before the transaction, so
   * that none is held open for it, and not at all for a request that was booked already. What it
   * read may have changed since: `work` must look again.
   */
  async bookPrepared<P, T extends object>(
    prepare: () => Promise<P>,
    work: (tx: Tx, by: By, prepared: P) => Promise<T>,
  ): Promise<T> {
    const earlier = await this.replayOf(currentClaim());
    if (earlier !== undefined) return earlier as T;
    const prepared = await prepare();
    return this.book((tx, by) => work(tx, by, prepared));
  }

  /**
   * One consistent snapshot for a page that is put together from several queries. When it is
   * stopped, the transaction ends with the statement under way and takes no further one.
   */
  async read<T>(work: (tx: Tx) => Promise<T>): Promise<T> {
    return this.database.client.$transaction((tx) => unlessStopped(work(tx)), {
      isolationLevel: 'RepeatableRead',
      maxWait: 15_000,
      timeout: 120_000,
    });
  }

  /** The workshop's day at this moment. */
  today(): Temporal.PlainDate {
    return dayAt(this.clock.now(), currentActor().workshop.timeZone);
  }

  private async replayOf(claim: IdempotencyClaim | undefined): Promise<object | undefined> {
    if (claim === undefined) return undefined;
    return findReplay(this.database.client, claim, currentActor().userId);
  }

  private by(): By {
    const actor = currentActor();
    const at = this.clock.now();
    return { ...actor, at, today: dayAt(at, actor.workshop.timeZone), journal: [] };
  }
}

const dayAt = (at: Date, timeZone: string): Temporal.PlainDate =>
  Temporal.Instant.fromEpochMilliseconds(at.getTime()).toZonedDateTimeISO(timeZone).toPlainDate();
