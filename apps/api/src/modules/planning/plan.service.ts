import { Injectable } from '@nestjs/common';
import { planInSteps, waysOut } from '../../domain/planning';
import { Decimal } from '../../domain/units';
import type { Prisma } from '../../generated/prisma/client';
import { Clock } from '../../platform/clock/clock';
import { dayToDb } from '../../platform/database/days';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { goOn, inTurns } from '../../platform/long-work/long-work';
import { noteInJournal } from '../../platform/journal/journal';
import {
  decodeCursor,
  limitOf,
  type Page,
  pageOf,
  type PageQuery,
} from '../../platform/paging/page';
import { orRefuse } from '../../platform/problems';
import type { PlanView, WayOutView } from './plan.dto';
import { planContent, wayOutView } from './plan.view';
import { loadProblem, type LoadedProblem } from './plan-problem.queries';
import { PEOPLE } from './planned-recipe';
import { listPlans, showPlan } from './saved-plans.queries';

const MINUTES_PER_HOUR = 60;

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
      return planContent(tx, loaded, orRefuse(await inTurns(planInSteps(loaded.problem))));
    });
    await goOn();
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

  /** Every plan that was made, the newest first; none is an empty list. */
  list(query: PageQuery): Promise<Page<PlanView>> {
    const [after] = decodeCursor(query.after, 1) ?? [];
    const limit = limitOf(query);
    return this.transactions.read(async (tx) =>
      pageOf(
        await listPlans(tx, limit + 1, after),
        limit,
        (plan) => plan,
        ({ id }) => [id],
      ),
    );
  }

  get(id?: string): Promise<PlanView> {
    return this.transactions.read((tx) => showPlan(tx, id));
  }

  /** What could be changed so that less goes short, tried out now, cheapest first. */
  waysOut(): Promise<WayOutView[]> {
    return this.transactions.read(async (tx) => {
      const loaded = await this.load(tx);
      const { settings, problem } = loaded;
      const short = orRefuse(await inTurns(planInSteps(problem)));
      const hour = settings.extraHourPrice;
      const tried = waysOut(problem, short, {
        mouldPrice: new Map(
          settings.mouldPrice === null
            ? []
            : [...problem.moulds.keys()].map((id) => [id, new Decimal(settings.mouldPrice ?? 0)]),
        ),
        minutePrice: new Map(
          hour === null ? [] : [[PEOPLE, new Decimal(hour).dividedBy(MINUTES_PER_HOUR)]],
        ),
      });
      return orRefuse(await inTurns(tried)).map((way) => wayOutView(loaded, way));
    });
  }

  private async load(tx: Tx): Promise<LoadedProblem> {
    const today = this.transactions.today().toString();
    return loadProblem(tx, today, this.clock.now());
  }
}
