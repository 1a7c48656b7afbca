import type { Result } from '../refusals/result';
import type { Effort } from './effort';
import { plan } from './plan';
import type { PlanningRefusal } from './refusals';
import { lost, missing } from './shortfalls';
import type { Try, WayOut } from './way-tries';

/** Every way is planned once through. */
const QUICK = { rounds: 0, searchTries: 0 };

/** Plans ways out as long as there are looks for one more. */
export class TriedWays {
  refusal: Result<never, PlanningRefusal> | undefined;
  private dearest = 0;

  constructor(private readonly looks: Effort) {}

  /** The one that mends most; the first of those that mend the same. */
  bestOf(steps: readonly Try[]): WayOut | undefined {
    let best: WayOut | undefined;
    for (const step of steps) {
      const way = this.tried(step);
      if (!way) break;
      if (!best || way.stillMissing.lessThan(best.stillMissing)) best = way;
      if (best.stillMissing.isZero()) break;
    }
    return best;
  }

  /** Of steps that never mend less the further they go, the first that mends as much as the last. */
  leastOf(steps: readonly Try[]): WayOut | undefined {
    const last = steps.at(-1);
    let best = last && this.tried(last);
    let [below, reached] = [-1, steps.length - 1];
    while (best && reached - below > 1) {
      const middle = Math.floor((below + reached) / 2);
      const step = steps[middle];
      const way = step && this.tried(step);
      if (!way) break;
      if (way.stillMissing.greaterThan(best.stillMissing)) below = middle;
      else [reached, best] = [middle, way];
    }
    return best;
  }

  private tried(step: Try): WayOut | undefined {
    const before = this.looks.left;
    if (before === 0 || before < this.dearest || this.refusal) return undefined;
    const planned = plan(step.problem, { ...QUICK, looks: this.looks });
    this.dearest = Math.max(this.dearest, before - this.looks.left);
    if (!planned.ok) {
      this.refusal = planned;
      return undefined;
    }
    const cost = step.spend(planned.value).plus(lost(planned.value));
    return { ...step.way, cost, stillMissing: missing(planned.value) };
  }
}
