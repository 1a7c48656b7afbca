import {
  additiveNorrish,
  ferroChirifeBoquet,
  grover,
  moneyBorn,
  raoult,
  ross,
  type Serum,
  zdanovskiiStokesRobinson,
} from './published-models';
import { serviceModel } from './serums';

/** Computed once by hand for these tests; g per 100 g of water, nothing capped. */
const CASES: readonly { serum: Serum; values: readonly number[] }[] = [
  {
    serum: { sucrose: 100 },
    values: [0.9349, 0.93476, 0.9348, 0.9348, 0.9348, 0.9445, 0.9269, 0.95],
  },
  {
    serum: { glucose: 60, fructose: 60 },
    values: [0.8701, 0.8701, 0.8701, 0.8814, 0.8773, 0.895, 0.8476, 0.8929],
  },
  {
    serum: { sucrose: 100, glucose: 50 },
    values: [0.8741, 0.87496, 0.8729, 0.8895, 0.8857, 0.8873, 0.8667, 0.9069],
  },
  {
    serum: { sucrose: 110, lactose: 8, glucose: 35, fructose: 35, sorbitol: 40 },
    values: [0.795, 0.79343, 0.7878, 0.8351, 0.8227, 0.7886, 0.7954, 0.8535],
  },
];

describe('mixtures, the service beside seven published models', () => {
  it.each(CASES)('%j', ({ serum, values }) => {
    const [zsr, own, fcb, additive, rossValue, groverValue, moneyBornValue, raoultValue] = values;
    const close = (value: number, expected: number | undefined, tolerance = 0.0002): void =>
      expect(Math.abs(value - (expected ?? 0))).toBeLessThan(tolerance);
    close(serviceModel(serum), own, 0.00005);
    close(zdanovskiiStokesRobinson(serum), zsr, 0.0006);
    close(ferroChirifeBoquet(serum), fcb);
    close(additiveNorrish(serum), additive);
    close(ross(serum), rossValue);
    close(grover(serum), groverValue);
    close(moneyBorn(serum), moneyBornValue);
    close(raoult(serum), raoultValue);
  });

  it('keeps its value when a solute is split in two, which the additive form does not', () => {
    const [half, whole] = [{ glucose: 60, fructose: 60 }, { glucose: 120 }];
    expect(serviceModel(half)).toBeCloseTo(serviceModel(whole), 10);
    expect(additiveNorrish(half) - additiveNorrish(whole)).toBeGreaterThan(0.01);
  });
});

/** Deterministic numbers from 0 to 1 (Lehmer's generator, modulus 2³¹ − 1). */
const numbers = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
};

interface Judged {
  readonly serum: Serum;
  readonly reference: number;
}

const randomSerums = (count: number): Judged[] => {
  const next = numbers(20261125);
  const between = (low: number, high: number): number => low + (high - low) * next();
  const serums: Judged[] = [];
  while (serums.length < count) {
    const serum = {
      sucrose: between(40, 150),
      lactose: between(3, 12),
      glucose: between(0, 50),
      fructose: between(0, 40),
      maltose: between(0, 25),
      sorbitol: between(0, 40),
      glycerol: between(0, 10),
      salt: between(0, 2),
    };
    const reference = zdanovskiiStokesRobinson(serum);
    if (reference >= 0.7 && reference <= 0.95) serums.push({ serum, reference });
  }
  return serums;
};

describe('300 random ganache-like serums against Zdanovskii–Stokes–Robinson', () => {
  const serums = randomSerums(300);
  const errorsOf = (model: (serum: Serum) => number): number[] =>
    serums.map(({ serum, reference }) => model(serum) - reference);
  const rms = (errors: readonly number[]): number =>
    Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / errors.length);

  it('keeps the service within ± 0.01, bias and spread as published for the mixing rule', () => {
    const errors = errorsOf(serviceModel);
    expect(rms(errors)).toBeLessThan(0.0045);
    expect(Math.max(...errors.map(Math.abs))).toBeLessThan(0.01);
  });

  it.each([
    ['Ferro Fontán–Chirife–Boquet', ferroChirifeBoquet],
    ['Money–Born', moneyBorn],
    ['Ross', ross],
    ['additive Norrish', additiveNorrish],
    ['Raoult', raoult],
  ])('is closer than %s', (_, model) => {
    expect(rms(errorsOf(serviceModel))).toBeLessThan(rms(errorsOf(model)));
  });
});
