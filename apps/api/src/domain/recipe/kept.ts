import { flowOf } from '../scaling';
import { Decimal, sum, ZERO } from '../units';
import type { LineInGrams } from './mix';
import type { RecipeContent } from './recipe';

export interface Kept {
  /** By line, 0–1. */
  readonly shares: readonly Decimal[];
  /** Grams at the end: steam is gone too. */
  readonly outG: Decimal;
}

/**
 * Share of each line that stays in the product: what is held back or scraped takes its part of all
 * lines that were in the pot, steam takes none, a strained infusion leaves wholly. All ones for
 * pieces and boxes, and for losses that don't fit (mixing refuses those).
 */
export const whatStays = (content: RecipeContent, lines: readonly LineInGrams[]): Kept => {
  const kept = lines.map((line) => new Decimal(line.role === 'infusion' ? 0 : 1));
  const all = sum(lines.map((line, index) => line.massG.times(kept[index] ?? ZERO)));
  if (content.yieldPieces !== null) return { shares: kept, outG: all };
  const weighed = lines.map((line) => ({
    massG: line.massG,
    infusion: line.role === 'infusion',
  }));
  const flow = flowOf(weighed, content.losses);
  if (!flow.ok) return { shares: kept, outG: all };
  let inPot = ZERO;
  let added = 0;
  for (const step of flow.value.steps) {
    if (step.kind === 'add') {
      const line = weighed[step.line];
      if (line && !line.infusion) inPot = inPot.plus(line.massG);
      added = step.line + 1;
      continue;
    }
    const left = inPot.minus(step.massG);
    if (step.kind !== 'steam' && inPot.greaterThan(0)) {
      for (let index = 0; index < added; index += 1) {
        kept[index] = (kept[index] ?? ZERO).times(left).dividedBy(inPot);
      }
    }
    inPot = left;
  }
  return { shares: kept, outG: inPot };
};
