import { norrish, syrupConstants } from '@api/domain/water-activity';
import { grover, hydration, moneyBorn, raoult, sucroseReference } from './published-models';
import { byMolality, byWeightPercent, serviceModel } from './serums';

describe('sucrose at 25 °C (Robinson & Stokes osmotic coefficients, from memory)', () => {
  it.each([
    [0.5, 0.9907, 0.9906, 0.9911, 0.9867, 1.023],
    [1, 0.9806, 0.9803, 0.9823, 0.9737, 1.0063],
    [2, 0.9582, 0.9577, 0.9652, 0.9488, 0.9736],
    [3, 0.9328, 0.9327, 0.9487, 0.9251, 0.9421],
    [4, 0.9056, 0.9059, 0.9328, 0.9025, 0.9115],
    [5, 0.8776, 0.8777, 0.9174, 0.8811, 0.882],
    [6, 0.8496, 0.8486, 0.9025, 0.8606, 0.8536],
  ])('%d mol per kg', (m, reference, norrishValue, raoultValue, moneyBornValue, groverValue) => {
    const serum = { sucrose: m * 34.23 };
    expect(sucroseReference(m)).toBeCloseTo(reference, 4);
    expect(Math.abs(hydration('sucrose', m) - reference)).toBeLessThan(0.0003);
    expect(Math.abs(serviceModel(serum) - norrishValue)).toBeLessThan(0.0001);
    expect(Math.abs(serviceModel(serum) - reference)).toBeLessThan(0.0012);
    expect(Math.abs(raoult(serum) - raoultValue)).toBeLessThan(0.0001);
    expect(Math.abs(moneyBorn(serum) - moneyBornValue)).toBeLessThan(0.0001);
    expect(Math.abs(grover(serum) - groverValue)).toBeLessThan(0.0001);
  });

  it('is 0.848 when saturated, 67.5 % (FAO-derived text on fruit preservation: 0.848)', () => {
    expect(Math.abs(byWeightPercent('sucrose', 67.5) - 0.848)).toBeLessThan(0.002);
  });
});

describe('glucose at 25 °C (Stokes & Robinson 1966 hydration model, from memory)', () => {
  it.each([
    [1, 0.9816],
    [3, 0.9432],
    [5, 0.9034],
    [7, 0.8633],
    [10, 0.8049],
  ])('%d mol per kg', (m, reference) => {
    expect(Math.abs(hydration('glucose', m) - reference)).toBeLessThan(0.0002);
    expect(Math.abs(byMolality('glucose', m, 180.16) - reference)).toBeLessThan(0.001);
  });
});

describe('freezing points (CRC Handbook, concentrative properties)', () => {
  it.each([
    ['fructose', 9, 0.9901, 0.001],
    ['fructose', 18, 0.9778, 0.001],
    ['fructose', 28, 0.9601, 0.001],
    ['lactose', 2.5, 0.9986, 0.0002],
    ['lactose', 5.5, 0.9969, 0.0002],
    ['lactose', 8, 0.9952, 0.0002],
    ['maltose', 20, 0.9862, 0.0003],
    ['maltose', 36, 0.9657, 0.0025],
    ['maltose', 44, 0.9494, 0.005],
    ['mannitol', 15, 0.9823, 0.0005],
    ['ethanol', 6, 0.9757, 0.0015],
    ['ethanol', 12, 0.9474, 0.0025],
  ])('%s %d %% by weight', (name, percent, reference, tolerance) => {
    expect(Math.abs(byWeightPercent(name, percent) - reference)).toBeLessThan(tolerance);
  });

  it('shows why ethanol is modelled to 15 % only: at 28 % Raoult is far too high', () => {
    expect(byWeightPercent('ethanol', 28) - 0.8353).toBeGreaterThan(0.02);
  });
});

describe('glycerol at 25 °C (Zhang, Grace & Sun 2022, Drying Technology 40:2404)', () => {
  it.each([
    [10, 0.9759],
    [20, 0.947],
    [30, 0.9116],
    [40, 0.8677],
    [50, 0.8117],
    [60, 0.7382],
  ])('%d %% by weight', (percent, reference) => {
    const error = Math.abs(byWeightPercent('glycerol', percent) - reference);
    expect(error).toBeLessThan(percent < 60 ? 0.0055 : 0.0105);
  });

  it.each([
    [10, 0.9782],
    [30, 0.9161],
    [50, 0.809],
  ])('the classical isopiestic line agrees at %d %% (from memory)', (percent, reference) => {
    const molality = (percent * 1000) / (100 - percent) / 92.09;
    expect(Math.abs(hydration('glycerol', molality) - reference)).toBeLessThan(0.001);
    expect(Math.abs(byWeightPercent('glycerol', percent) - reference)).toBeLessThan(0.002);
  });
});

describe('sorbitol (Sloan & Labuza 1975, amorphous sorption: rough)', () => {
  it.each([
    [110, 0.9],
    [55, 0.8],
    [35, 0.7],
  ])('%d g of water per 100 g', (water, published) => {
    expect(Math.abs(norrish(water, [soluteSorbitol]) - published)).toBeLessThan(0.02);
  });
  const soluteSorbitol = { name: 'sorbitol', massG: 100, molarMass: 182.17, k: 1.65, cap: null };
});

describe('glucose syrup (corn syrup sorption, Sloan & Labuza 1975)', () => {
  const at = (de: number, water: number): number =>
    norrish(water, [{ name: 'syrup', massG: 100, ...syrupConstants(de) }]);

  it.each([
    [54, 0.9],
    [30, 0.8],
    [20, 0.7],
  ])('DE 42, %d g of water per 100 g of solids', (water, published) => {
    expect(Math.abs(at(42, water) - published)).toBeLessThan(0.0065);
  });

  it('would be dangerously low if the syrup were taken as glucose', () => {
    expect(at(100, 54)).toBeLessThan(0.81);
  });

  it.each([
    [40, 450, 6.1],
    [42, 429, 5.8],
    [60, 300, 3.9],
  ])('DE %d counts as M %d, K %d (DE = 100·180/M)', (de, molarMass, k) => {
    expect(syrupConstants(de).molarMass).toBeCloseTo(molarMass, -0.5);
    expect(syrupConstants(de).k).toBeCloseTo(k, 0.8);
  });
});
