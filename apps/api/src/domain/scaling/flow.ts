import { ok, refuse, type Result } from '../refusals/result';
import { Decimal, ZERO } from '../units';
import type { StepLoss } from './losses';
import type { ScalingRefusal } from './refusals';
import { say } from '../words/say';

/** A line that is weighed into a pot. */
export interface WeighedLine {
  readonly massG: Decimal;
  /** Strained out again: its own weight never stays. */
  readonly infusion: boolean;
}

export type FlowStep =
  | { readonly kind: 'add'; readonly line: number }
  | { readonly kind: 'steam' | 'strain' | 'remove'; readonly massG: Decimal };

export interface Flow {
  readonly steps: readonly FlowStep[];
  /** What is left at the end. */
  readonly outG: Decimal;
}

/**
 * Carries the lines of a recipe kept by weight through its expected losses, in order. A loss acts
 * after the line it names (`afterLine`, counted from 1), or after the last. Its per cent is of what
 * is in the pot then, samples and rejects too; liquid held back may be given per gram of the solids instead.
 */
export const flowOf = (
  lines: readonly WeighedLine[],
  losses: readonly StepLoss[],
): Result<Flow, ScalingRefusal> => {
  const steps: FlowStep[] = [];
  let inPot = ZERO;
  let steeping = ZERO;
  const lose = (loss: StepLoss): Result<null, ScalingRefusal> => {
    const massG = lostG(loss, inPot, steeping);
    if (
      massG.isNegative() ||
      massG.greaterThan(inPot) ||
      (massG.equals(inPot) && !inPot.isZero())
    ) {
      return losesEverything(loss);
    }
    inPot = inPot.minus(massG);
    if (loss.kind === 'held_back') steeping = ZERO;
    steps.push({ kind: STEP_OF[loss.kind] ?? 'remove', massG });
    return ok(null);
  };
  for (const [index, line] of lines.entries()) {
    steps.push({ kind: 'add', line: index });
    if (line.infusion) steeping = steeping.plus(line.massG);
    else inPot = inPot.plus(line.massG);
    const isLast = index === lines.length - 1;
    for (const loss of losses) {
      const after = loss.afterLine ?? lines.length;
      if (after !== index + 1 && !(isLast && after > lines.length)) continue;
      const lost = lose(loss);
      if (!lost.ok) return lost;
    }
  }
  return ok({ steps, outG: inPot });
};

const STEP_OF: Readonly<Partial<Record<StepLoss['kind'], 'steam' | 'strain'>>> = {
  steam: 'steam',
  held_back: 'strain',
};

const lostG = (loss: StepLoss, inPot: Decimal, steeping: Decimal): Decimal =>
  loss.kind === 'held_back' && loss.retentionRatio
    ? steeping.times(loss.retentionRatio)
    : inPot.times(loss.percent).dividedBy(100);

export const losesEverything = (loss: StepLoss): Result<never, ScalingRefusal> =>
  refuse({
    code: 'step-loses-everything',
    detail: say`Step “${loss.step}” loses as much as goes into it, or more. Give 0 to under 100 %.`,
    facts: { step: loss.step },
  });
