import { effectivePresence, isDeclared, originsWithin } from '../allergens';
import type { IngoingLot, IngoingMix } from '../declaration';
import type { MarketRules } from '../market';
import type { Allergen } from '../specification';
import { ZERO, type Decimal } from '../units';
import { actionLevelMgPerKg } from './reference-doses';

/** Where an allergen that nobody put in on purpose may come from. */
export type ContactSource =
  | { readonly kind: 'supplier'; readonly lotCode: string; readonly itemName: string }
  | { readonly kind: 'heel' | 'rework'; readonly lotCode: string; readonly itemName: string }
  | { readonly kind: 'shared_line'; readonly line: string };

export interface SharedLine {
  readonly line: string;
  readonly allergen: Allergen;
  /** Carried over after cleaning, mg of protein in a kilogram of product; null when not measured. */
  readonly proteinMgPerKg: Decimal | null;
}

export interface ContactAssessment {
  readonly allergen: Allergen;
  readonly sources: readonly ContactSource[];
  /** Sum over the sources; null as soon as one of them isn't known. */
  readonly proteinMgPerKg: Decimal | null;
  readonly actionLevelMgPerKg: Decimal | null;
  /** `above`: state it. `below`: may be left out by a person. `unknown` counts as above. */
  readonly verdict: 'above' | 'below' | 'unknown';
}

interface Trace {
  readonly allergen: Allergen;
  readonly source: ContactSource;
  readonly proteinMgPerKg: Decimal | null;
}

/**
 * Allergens that may be in the product without being meant to, each with its numbers against the
 * reference dose. What is an ingredient anyway isn't listed again. Residues are uneven in fact; the
 * sum assumes that they are well mixed, and says nothing of hot spots.
 */
export const assessContacts = (
  mix: IngoingMix,
  lines: readonly SharedLine[],
  sittingG: Decimal,
  market: MarketRules,
): ContactAssessment[] => {
  const traces = [
    ...mix.lots.flatMap((lot) => supplierTraces(lot, mix, market)),
    ...mix.lots.flatMap((lot) => leftoverTraces(lot, mix, market)),
    ...lines.map(({ line, allergen, proteinMgPerKg }): Trace => {
      return { allergen, source: { kind: 'shared_line', line }, proteinMgPerKg };
    }),
  ];
  const meant = meantAllergens(mix, market);
  return market.allergens
    .filter((allergen) => !meant.has(allergen))
    .flatMap((allergen) => {
      const here = traces.filter((trace) => trace.allergen === allergen);
      return here.length === 0 ? [] : [assess(allergen, here, sittingG)];
    });
};

const assess = (
  allergen: Allergen,
  traces: readonly Trace[],
  sittingG: Decimal,
): ContactAssessment => {
  const known = traces.every((trace) => trace.proteinMgPerKg !== null);
  const proteinMgPerKg = known
    ? traces.reduce((total, trace) => total.plus(trace.proteinMgPerKg ?? ZERO), ZERO)
    : null;
  const level = actionLevelMgPerKg(allergen, sittingG);
  const verdict =
    proteinMgPerKg === null || level === null
      ? 'unknown'
      : proteinMgPerKg.greaterThan(level)
        ? 'above'
        : 'below';
  const sources = traces.map((trace) => trace.source);
  return { allergen, sources, proteinMgPerKg, actionLevelMgPerKg: level, verdict };
};

/** Allergens of what was drawn on purpose: they are declared at any level. */
const meantAllergens = (mix: IngoingMix, market: MarketRules): ReadonlySet<Allergen> =>
  new Set(mix.lots.filter((lot) => lot.via === 'draw').flatMap((lot) => inside(lot, market)));

const inside = ({ specification }: IngoingLot, market: MarketRules): Allergen[] =>
  specification
    ? originsWithin(specification.ingredient)
        .filter((origin) => isDeclared(origin, market))
        .map((origin) => origin.allergen)
    : [];

/** "May contain" of a supplier, thinned by the lot's share of the product. */
const supplierTraces = (lot: IngoingLot, mix: IngoingMix, market: MarketRules): Trace[] => {
  const { specification, lotCode, itemName } = lot;
  if (!specification) return [];
  return market.allergens
    .filter((a) => effectivePresence(specification, a, market) === 'may_contain')
    .map((allergen) => {
      const stated = specification.statements.crossContactProteinMgPerKg[allergen];
      const source = { kind: 'supplier' as const, lotCode, itemName };
      return { allergen, source, proteinMgPerKg: thinned(stated, lot, mix) };
    });
};

/** What a tank's heel or reworked goods bring: the protein of an ingredient, thinned. */
const leftoverTraces = (lot: IngoingLot, mix: IngoingMix, market: MarketRules): Trace[] => {
  const { specification, lotCode, itemName, via } = lot;
  if (!specification || via === 'draw') return [];
  return [...new Set(inside(lot, market))].map((allergen) => {
    const percent = specification.statements.allergenProteinPercent[allergen];
    const perKg = percent?.times(10_000);
    const source = { kind: via, lotCode, itemName };
    return { allergen, source, proteinMgPerKg: thinned(perKg, lot, mix) };
  });
};

const thinned = (mgPerKg: Decimal | undefined, lot: IngoingLot, mix: IngoingMix): Decimal | null =>
  mgPerKg && mix.finishedG.greaterThan(0)
    ? mgPerKg.times(lot.massG).dividedBy(mix.finishedG)
    : null;
