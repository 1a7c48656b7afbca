import { Injectable } from '@nestjs/common';
import { plan, waysOut } from '../../domain/planning';
import { Decimal } from '../../domain/units';
import type { Prisma } from '../../generated/prisma/client';
import { Clock } from '../../platform/clock/clock';
import { dayToDb } from '../../platform/database/days';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, orRefuse } from '../../platform/problems';
import type { PlanContent, PlanView, WayOutView } from './plan.dto';
import { planContent, wayOutView } from './plan.view';
import { loadProblem, type LoadedProblem } from './plan-problem.queries';
import { PEOPLE } from './planned-recipe';
import { say } from '../../domain/words/say';

const MINUTES_PER_HOUR = 60;

/** A stored plan with the batches that were opened from it; the newest when none is named. */
export const showPlan = async (tx: Tx, id?: string): Promise<PlanView> => {
  const row = await tx.savedPlan.findFirst({
    ...(id === undefined ? {} : { where: { id } }),
    orderBy: [{ at: 'desc' }, { id: 'desc' }],
    include: { starts: true },
  });
  const found = orNotFound(row, 'plan', id ?? say`yet: make one first`);
  const batches = await tx.batch.findMany({
    where: { id: { in: found.starts.map(({ batchId }) => batchId) } },
    select: { id: true, code: true },
  });
  const codeOf = new Map(batches.map(({ id: batchId, code }) => [batchId, code]));
  return {
    ...(found.result as unknown as PlanContent),
    id: found.id,
    madeAt: found.at.toISOString(),
    started: found.starts.map(({ key, batchId }) => ({
      key,
      batchId,
      batchCode: codeOf.get(batchId) ?? '',
    })),
  };
};

@Injectable()
export class PlanService {
  constructor(
    private readonly transactions: Transactions,
    private readonly clock: Clock,
  ) {}

  /** Plans everything that is open from today on, and keeps the plan as it was made. */
  async make(): Promise<PlanView> {
    const content = await this.transactions.read(async (tx) => {
      const loaded = await this.load(tx);
      return planContent(tx, loaded, orRefuse(plan(loaded.problem)));
    });
    return this.transactions.book(async (tx, by) => {
      const id = newId();
      await tx.savedPlan.create({
        data: {
          id,
          today: dayToDb(content.today),
          result: content as unknown as Prisma.InputJsonObject,
          at: by.at,
          userId: by.userId,
        },
      });
      noteInJournal(by, {
        action: 'plan.made',
        subjectKind: 'plan',
        subjectId: id,
        detail: { batches: content.batches.length, shortfalls: content.shortfalls.length },
      });
      return showPlan(tx, id);
    });
  }

  get(id?: string): Promise<PlanView> {
    return this.transactions.read((tx) => showPlan(tx, id));
  }

  /** What could be changed so that less goes short, tried out now, cheapest first. */
  waysOut(): Promise<WayOutView[]> {
    return this.transactions.read(async (tx) => {
      const loaded = await this.load(tx);
      const { settings, problem } = loaded;
      const short = orRefuse(plan(problem));
      const hour = settings.extraHourPrice;
      const ways = waysOut(problem, short, {
        mouldPrice: new Map(
          settings.mouldPrice === null
            ? []
            : [...problem.moulds.keys()].map((id) => [id, new Decimal(settings.mouldPrice ?? 0)]),
        ),
        minutePrice: new Map(
          hour === null ? [] : [[PEOPLE, new Decimal(hour).dividedBy(MINUTES_PER_HOUR)]],
        ),
      });
      return orRefuse(ways).map((way) => wayOutView(loaded, way));
    });
  }

  private async load(tx: Tx): Promise<LoadedProblem> {
    const today = this.transactions.today().toString();
    return loadProblem(tx, today, this.clock.now());
  }
}
