import { ok, refuse, type Result } from '../refusals/result';
import { Decimal, ZERO } from '../units';
import { NOTHING, plus, times, totalG, type MakeUp } from './make-up';
import type { CompositionRefusal } from './refusals';
import { say } from '../words/say';

/** What happens to a pot, in order. */
export type PotStep =
  | {
      readonly kind: 'add';
      /** What comes in, by `makeUpOf` or from a component's own recipe. */
      readonly content: MakeUp;
      /** Strained out again: what it gives off into the liquid is left out of the account. */
      readonly infusion: boolean;
    }
  /** Weight lost by boiling: water, and alcohol before it. */
  | { readonly kind: 'steam'; readonly massG: Decimal }
  /** Infused solids leave and keep this much liquid with them. */
  | { readonly kind: 'strain'; readonly heldBackG: Decimal }
  /** A share of the well-mixed content leaves: scrapings, samples. */
  | { readonly kind: 'remove'; readonly massG: Decimal };

export interface Pot {
  readonly content: MakeUp;
  /** All that went in, infusions too. */
  readonly inputG: Decimal;
  readonly steamG: Decimal;
  /** Liquid that went with the strained solids. */
  readonly heldBackG: Decimal;
  /** The solids themselves. */
  readonly strainedOutG: Decimal;
  readonly removedG: Decimal;
  /** Infused solids that no strain step took out yet. */
  readonly steepingG: Decimal;
}

const EMPTY: Pot = {
  content: NOTHING,
  inputG: ZERO,
  steamG: ZERO,
  heldBackG: ZERO,
  strainedOutG: ZERO,
  removedG: ZERO,
  steepingG: ZERO,
};

/**
 * Carries a pot through its steps. Content always weighs the input less steam, liquid held back,
 * solids strained out and removals; infused solids that were never strained leave at the end.
 */
export const cook = (steps: readonly PotStep[]): Result<Pot, CompositionRefusal> => {
  let pot = EMPTY;
  for (const step of steps) {
    const next = apply(pot, step);
    if (!next.ok) return next;
    pot = next.value;
  }
  return pot.steepingG.isZero() ? ok(pot) : ok(strain(pot, pot.content, ZERO));
};

const apply = (pot: Pot, step: PotStep): Result<Pot, CompositionRefusal> => {
  if (step.kind === 'add') {
    const massG = totalG(step.content);
    const inputG = pot.inputG.plus(massG);
    if (step.infusion) return ok({ ...pot, inputG, steepingG: pot.steepingG.plus(massG) });
    return ok({ ...pot, inputG, content: plus(pot.content, step.content) });
  }
  if (step.kind === 'steam') {
    const content = boilOff(pot.content, step.massG);
    return content.ok
      ? ok({ ...pot, content: content.value, steamG: pot.steamG.plus(step.massG) })
      : content;
  }
  const outG = step.kind === 'strain' ? step.heldBackG : step.massG;
  const left = withoutShare(pot.content, outG);
  if (!left.ok) return left;
  if (step.kind === 'strain') return ok(strain(pot, left.value, outG));
  return ok({ ...pot, content: left.value, removedG: pot.removedG.plus(outG) });
};

const strain = (pot: Pot, content: MakeUp, heldBackG: Decimal): Pot => ({
  ...pot,
  content,
  heldBackG: pot.heldBackG.plus(heldBackG),
  strainedOutG: pot.strainedOutG.plus(pot.steepingG),
  steepingG: ZERO,
});

/**
 * Takes steam off. Alcohol boils off before water: an assumption on the safe side for water
 * activity, since alcohol that is gone no longer lowers it.
 */
const boilOff = (content: MakeUp, massG: Decimal): Result<MakeUp, CompositionRefusal> => {
  const alcoholG = Decimal.min(content.parts.alcohol, massG);
  const waterG = massG.minus(alcoholG);
  if (waterG.greaterThan(content.parts.water)) {
    return refuse({
      code: 'more-steam-than-water',
      detail: say`${massG.toFixed(1)} g of steam is more than the water in the pot (${content.parts.water.toFixed(1)} g). Weigh before and after again.`,
    });
  }
  const parts = {
    ...content.parts,
    alcohol: content.parts.alcohol.minus(alcoholG),
    water: content.parts.water.minus(waterG),
  };
  return ok({ ...content, parts });
};

const withoutShare = (content: MakeUp, massG: Decimal): Result<MakeUp, CompositionRefusal> => {
  const total = totalG(content);
  if (massG.greaterThan(total)) {
    return refuse({
      code: 'more-lost-than-present',
      detail: say`${massG.toFixed(1)} g can't leave a pot that holds ${total.toFixed(1)} g.`,
    });
  }
  if (massG.isZero()) return ok(content);
  return ok(times(content, total.minus(massG).dividedBy(total)));
};
