import { Decimal, sum } from '../units';

export type CostCategory = 'material' | 'loss' | 'packaging' | 'labour' | 'overhead';

export const COST_CATEGORIES: readonly CostCategory[] = [
  'material',
  'loss',
  'packaging',
  'labour',
  'overhead',
];

/** One cause of cost. A cost is a list of these; the whole is their sum and nothing else. */
export interface CostEntry {
  readonly category: CostCategory;
  /** Shell, filling, cap, decoration …: where in the product the money sits. */
  readonly part: string;
  /** The item that was bought, the role that worked, or the overhead rule. */
  readonly source: string;
  /** Money, not rounded. */
  readonly amount: Decimal;
}

export const totalCost = (entries: readonly CostEntry[]): Decimal =>
  sum(entries.map((entry) => entry.amount));

export const scaleCost = (entries: readonly CostEntry[], factor: Decimal): CostEntry[] =>
  entries.map((entry) => ({ ...entry, amount: entry.amount.times(factor) }));

/** Adds up entries of the same category, part and source, in the order of first appearance. */
export const mergeCost = (entries: readonly CostEntry[]): CostEntry[] => {
  const merged = new Map<string, CostEntry>();
  for (const entry of entries) {
    const key = JSON.stringify([entry.category, entry.part, entry.source]);
    const before = merged.get(key);
    merged.set(key, before ? { ...entry, amount: before.amount.plus(entry.amount) } : entry);
  }
  return [...merged.values()];
};

/**
 * A component's cost as it stands inside what is made from it: its material sits in the part that
 * it plays there (a ganache becomes filling). A piece in a slot of a box keeps its own parts.
 */
export const asPart = (entries: readonly CostEntry[], role: string): CostEntry[] =>
  entries.map((entry) =>
    role !== 'slot' && (entry.category === 'material' || entry.category === 'loss')
      ? { ...entry, part: role }
      : entry,
  );

/**
 * Moves the part of the material that doesn't reach the product to `loss`. The sum stays: waste was
 * paid for with the rest, and a good piece bears it.
 */
export const splitLoss = (entries: readonly CostEntry[], lossRatio: Decimal): CostEntry[] => {
  if (lossRatio.isZero()) return [...entries];
  return entries.flatMap((entry) => {
    if (entry.category !== 'material') return [entry];
    const lost = entry.amount.times(lossRatio);
    const kept: CostEntry = { ...entry, amount: entry.amount.minus(lost) };
    return [kept, { ...entry, category: 'loss' as const, amount: lost }];
  });
};

/**
 * Losses that weigh but cost nothing of their own: steam is water that was meant to leave, and what
 * a strained infusion holds back is the recipe working as meant.
 */
const MEANT: ReadonlySet<string> = new Set(['steam', 'held_back']);

export const isWaste = (kind: string): boolean => !MEANT.has(kind);
