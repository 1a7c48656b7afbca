import { makeUpOf } from '@api/domain/composition';
import { compositionOf } from '@api/domain/reference-ingredients';
import { Decimal } from '@api/domain/units';
import { sucroseReference } from './published-models';
import { estimateWaterActivity, LACTOSE_CAP, SUCROSE_CAP } from '@api/domain/water-activity';

const syrupOf = (figures: Parameters<typeof compositionOf>[0]) =>
  estimateWaterActivity(makeUpOf(compositionOf(figures), new Decimal(100)));

describe('what the water can hold', () => {
  it('caps sucrose at Charles’ 66.6 % at 20 °C (from memory); old tables print 204 g per 100 g', () => {
    const t = 20;
    const charles = 64.397 + 0.07251 * t + 0.0020569 * t ** 2 - 9.035e-6 * t ** 3;
    expect(charles).toBeCloseTo(66.6, 1);
    expect(Math.abs(SUCROSE_CAP - charles / (100 - charles))).toBeLessThan(0.002);
    expect(SUCROSE_CAP).toBeLessThanOrEqual(2.04);
  });

  it('caps lactose at condensed-milk practice, under Hudson’s 21.6 g per 100 g at 25 °C', () => {
    expect(LACTOSE_CAP).toBe(0.15);
  });

  it('never lets undissolved sucrose lower the estimate', () => {
    const saturated = syrupOf({ water: 30, sucrose: 60 });
    const grainy = syrupOf({ water: 25, sucrose: 75 });
    if (saturated.status !== 'estimated' || grainy.status !== 'estimated') throw new Error('no');
    const reference = sucroseReference((SUCROSE_CAP * 1000) / 342.3);
    expect(Math.abs(grainy.capped - reference)).toBeLessThan(0.0015);
    expect(grainy.allDissolved).toBeLessThan(grainy.capped);
    expect(grainy.value.toNumber()).toBe(0.85);
    expect(grainy.cautions.map((row) => row.code)).toContain('sucrose-may-grain');
  });

  it('warns above 0.15 g of lactose per g of water', () => {
    const rich = syrupOf({ water: 40, sucrose: 50, lactose: 10 });
    expect(rich.cautions.map((row) => row.code)).toContain('lactose-may-grain');
  });
});
