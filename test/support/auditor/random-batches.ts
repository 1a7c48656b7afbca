import fc from 'fast-check';
import type { AuditedBatch } from './rationals';

const grams = (mg: number): string => (mg / 1000).toFixed(3);

interface Seed {
  readonly received: number;
  readonly plans: readonly {
    readonly picks: readonly (readonly [number, number])[];
    readonly steamPer: number;
    readonly scrapPer: number;
    readonly heldPer: number;
    readonly heldIsSteam: boolean;
    readonly outputs: number;
  }[];
}

const seed: fc.Arbitrary<Seed> = fc.record({
  received: fc.integer({ min: 1, max: 5 }),
  plans: fc.array(
    fc.record({
      picks: fc.array(fc.tuple(fc.nat(1_000_000), fc.integer({ min: 0, max: 3_000_000 })), {
        minLength: 1,
        maxLength: 4,
      }),
      steamPer: fc.nat(20),
      scrapPer: fc.nat(10),
      heldPer: fc.nat(60),
      heldIsSteam: fc.boolean(),
      outputs: fc.integer({ min: 1, max: 3 }),
    }),
    { minLength: 1, maxLength: 9 },
  ),
});

/**
 * Random makings over a few received lots: diamonds, topped-up tanks (a lot drawn with its own
 * ancestor), rework, packaging of no weight, strained-out draws, steam, scrapings, several outputs.
 */
export const randomBatches: fc.Arbitrary<AuditedBatch[]> = seed.map(({ received, plans }) => {
  const lots = Array.from({ length: received }, (_, index) => `R${String(index)}`);
  return plans.map((plan, number) => {
    const draws = plan.picks.map(([pick, mg]) => ({
      lot: lots[pick % lots.length] ?? 'R0',
      mg,
    }));
    const first = draws[0] ?? { lot: 'R0', mg: 0 };
    const total = draws.reduce((sum, draw) => sum + draw.mg, 0);
    const held = Math.floor((first.mg * plan.heldPer) / 100);
    const steam = Math.floor(((total - held) * plan.steamPer) / 100);
    const scrap = Math.floor(((total - held) * plan.scrapPer) / 100);
    const made = total - held - steam - scrap;
    const each = Math.floor(made / plan.outputs);
    const outputs = Array.from({ length: plan.outputs }, (_, index) => ({
      lot: `L${String(number)}-${String(index)}`,
      grams: grams(index === 0 ? made - each * (plan.outputs - 1) : each),
    }));
    lots.push(...outputs.map((output) => output.lot));
    return {
      id: `B${String(number)}`,
      draws: draws.map((draw) => ({ lot: draw.lot, grams: grams(draw.mg) })),
      losses: [
        { grams: grams(steam), volatile: true },
        { grams: grams(scrap) },
        { grams: grams(held), lot: first.lot, volatile: plan.heldIsSteam },
      ],
      outputs,
    };
  });
});
