import { ok, refuse, type Result } from '../refusals/result';
import { Decimal, ZERO, sum } from '../units';
import {
  asPart,
  isWaste,
  mergeCost,
  scaleCost,
  splitLoss,
  totalCost,
  type CostEntry,
} from './cost-entries';
import { asPackaging, noGoodOutput } from './designed-cost';
import { labourCost, overheadCost, totalMinutes } from './labour-and-overhead';
import type { LotCost, MadeBatch, MadeFacts, MadeOutput } from './made-facts';
import type { CostingRefusal } from './refusals';
import { say } from '../words/say';

/**
 * Cost of whole lots as they were made, lot by lot from what was really paid (the first lot first
 * is a matter of which lot was scanned, so no average is formed). Batches are walked so that each
 * comes after those that made what it draws; give them in the order of their making and one pass
 * is enough, however deep a chain of tank charges is.
 */
export const madeCosts = (facts: MadeFacts): Result<Map<string, LotCost>, CostingRefusal> => {
  const known = new Map<string, LotCost>();
  const received = new Set(facts.received.map(({ lot }) => lot));
  for (const { lot, item, quantity, price } of facts.received) {
    const entry: CostEntry = { category: 'material', part: 'base', source: item, amount: price };
    known.set(lot, { quantity, entries: [entry] });
  }
  let waiting = facts.batches.filter((batch) => batch.outputs.length > 0);
  while (waiting.length > 0) {
    const later: MadeBatch[] = [];
    for (const batch of waiting) {
      if (!batch.draws.every((draw) => known.has(draw.lot))) {
        later.push(batch);
        continue;
      }
      const cost = costOfBatch(batch, known, received, facts);
      if (!cost.ok) return cost;
      for (const [lot, value] of cost.value) known.set(lot, value);
    }
    if (later.length === waiting.length) return unknownLot(later, known);
    waiting = later;
  }
  return ok(known);
};

const costOfBatch = (
  batch: MadeBatch,
  known: ReadonlyMap<string, LotCost>,
  received: ReadonlySet<string>,
  facts: MadeFacts,
): Result<Map<string, LotCost>, CostingRefusal> => {
  const drawn: CostEntry[] = [];
  let bought = ZERO;
  for (const draw of batch.draws) {
    const lot = known.get(draw.lot);
    if (!lot || lot.quantity.isZero()) return noGoodOutput(say`lot ${draw.lot}`);
    const cost = scaleCost(lot.entries, draw.quantity.dividedBy(lot.quantity));
    if (received.has(draw.lot)) bought = bought.plus(totalCost(cost));
    drawn.push(
      ...(draw.role === 'packaging' ? asPackaging(cost) : asPart(cost, partOf(draw.role))),
    );
  }
  const labour = labourCost(batch.labour, facts.rates, batch.day);
  if (!labour.ok) return labour;
  const products = batch.outputs.filter(({ role }) => role === 'product');
  const overhead = overheadCost(facts.overhead, {
    minutes: totalMinutes(batch.labour),
    pieces: batch.makesPieces ? sum(products.map(({ quantity }) => quantity)) : ZERO,
    directCost: bought.plus(totalCost(labour.value)),
  });
  const goods = mergeCost(splitLoss(drawn, wasteRatioOf(batch)));
  return ok(shareOut(batch, goods, [...labour.value, ...overhead]));
};

/** A topped-up tank is still one chocolate: heel and charge aren't parts that a person looks for. */
const partOf = (role: string): string =>
  role === 'heel' || role === 'charge' || role === 'rework' ? 'base' : role;

const wasteRatioOf = (batch: MadeBatch): Decimal => {
  const wasted = sum(batch.losses.filter(({ kind }) => isWaste(kind)).map(({ massG }) => massG));
  const whole = wasted.plus(sum(batch.outputs.map(({ massG }) => massG)));
  return whole.isZero() ? ZERO : wasted.dividedBy(whole);
};

/** Goods go by weight over everything that came out; work and overhead over the good product. */
const shareOut = (
  batch: MadeBatch,
  goods: readonly CostEntry[],
  work: readonly CostEntry[],
): Map<string, LotCost> => {
  const weigh = (output: MadeOutput): Decimal =>
    batch.outputs.some(({ massG }) => !massG.isZero()) ? output.massG : output.quantity;
  const products = batch.outputs.filter(({ role }) => role === 'product');
  const bearers = products.length > 0 ? products : batch.outputs;
  const all = sum(batch.outputs.map(weigh));
  const bearing = sum(bearers.map(weigh));
  const shares = batch.outputs.map((output): [string, LotCost] => {
    const own = scaleCost(goods, weigh(output).dividedBy(all));
    const worked = bearers.includes(output)
      ? scaleCost(work, weigh(output).dividedBy(bearing))
      : [];
    return [output.lot, { quantity: output.quantity, entries: mergeCost([...own, ...worked]) }];
  });
  return new Map(shares);
};

const unknownLot = (
  batches: readonly MadeBatch[],
  known: ReadonlyMap<string, LotCost>,
): Result<never, CostingRefusal> => {
  const lot = batches.flatMap(({ draws }) => draws).find((draw) => !known.has(draw.lot))?.lot ?? '';
  return refuse({
    code: 'lot-cost-unknown',
    detail: say`What lot ${lot} cost is not known, so nothing made from it can be costed. Enter its price.`,
    facts: { lot },
  });
};

/** Cost of one gram or one good piece of a lot. */
export const unitCostOf = (lot: LotCost): CostEntry[] =>
  scaleCost(lot.entries, new Decimal(1).dividedBy(lot.quantity));
