import type { Caution } from '../composition';
import {
  foodCodeTableB,
  listeriaNotSupported,
  mayGrowAt,
  type GrowthLimit,
  type TableVerdict,
} from '../growth-limits';
import { ok, refuse, type Result } from '../refusals/result';
import { lifeCautions } from './life-cautions';
import {
  componentLimits,
  formulaLimit,
  growthLimit,
  isTested,
  nutLimit,
  statedLimit,
  type LifeFacts,
  type LifeLimit,
} from './limits';
import type { ShelfLifeRefusal } from './refusals';
import { say } from '../words/say';

export interface ShelfLife {
  /** Life that a date may use; null while no life is stated: an estimate makes no date by itself. */
  readonly days: number | null;
  /** Where to start when nothing is stated: the shortest low end. A suggestion, never a date. */
  readonly suggestedDays: number | null;
  readonly limits: readonly LifeLimit[];
  /** The limit that rules `days`, or `suggestedDays` while nothing is stated. */
  readonly ruling: LifeLimit | null;
  readonly mayGrow: readonly GrowthLimit[];
  /** US Food Code, Table B (not heat-treated, or not packaged): logic to think with, not the law here. */
  readonly decisionTable: TableVerdict | null;
  readonly listeriaNotSupported: boolean | null;
  readonly cautions: readonly Caution[];
}

const shortest = (
  limits: readonly LifeLimit[],
  of: (limit: LifeLimit) => number | null,
): LifeLimit | null =>
  limits.reduce<LifeLimit | null>((best, limit) => {
    const days = of(limit);
    if (days === null) return best;
    const held = best ? of(best) : null;
    return held === null || days < held ? limit : best;
  }, null);

/**
 * Every limit of a life, the one that rules, and why. A tested life (measured or validated, with its
 * document) stands against the guides; a chosen or estimated one is cut by each of them. Components
 * always cut.
 */
export const shelfLife = (facts: LifeFacts): ShelfLife => {
  const { stated, waterActivity, makeUp, ph } = facts;
  const { worst } = waterActivity;
  const guides = facts.isFilling
    ? [growthLimit(waterActivity), ...nutLimit(makeUp), ...formulaLimit(worst)]
    : nutLimit(makeUp);
  const components = componentLimits(facts.components);
  const limits = [...statedLimit(stated), ...guides, ...components];
  const binding = limits.filter(
    (limit) => !isTested(stated) || limit.kind === 'stated' || limit.kind === 'component',
  );
  const cap = shortest(binding, (limit) => limit.capDays);
  const start = shortest(limits, (limit) => limit.lowDays);
  const isStated = stated.days !== null;
  return {
    days: isStated ? (cap?.capDays ?? null) : null,
    suggestedDays: start?.lowDays ?? null,
    limits,
    ruling: isStated ? cap : start,
    mayGrow: worst ? mayGrowAt(worst) : [],
    decisionTable: worst && facts.isFilling ? foodCodeTableB(worst, ph) : null,
    listeriaNotSupported: worst && facts.isFilling ? listeriaNotSupported(worst, ph) : null,
    cautions: lifeCautions(facts, cap),
  };
};

/**
 * Checks a life before it is saved. Measured and validated lives name their document; a chosen or
 * estimated one may only go down from what the limits allow.
 */
export const acceptLife = (facts: LifeFacts): Result<ShelfLife, ShelfLifeRefusal> => {
  const { stated } = facts;
  const claimsTest = stated.basis === 'measured' || stated.basis === 'validated';
  if (stated.days !== null && claimsTest && !isTested(stated)) {
    return refuse({
      code: 'shelf-life-document-missing',
      detail: say`A measured or validated life names its document: the report, its number and its day.`,
    });
  }
  const life = shelfLife(facts);
  if (stated.days !== null && life.days !== null && stated.days > life.days) {
    return refuse({
      code: 'shelf-life-beyond-limits',
      detail: say`${stated.days} days is more than the ${life.days} that its limits allow. ${life.ruling?.reason ?? ''} Shorten it, or name the test that proves it.`,
      facts: { allowedDays: life.days, limit: life.ruling?.kind },
    });
  }
  return ok(life);
};
