import { jStat } from 'jstat';
import {
  fisherOneSided,
  fisherTwoSided,
  riskRatio,
  type TwoByTwo,
} from '@api/domain/complaint-causes';

// Oswego County church supper, 18 April 1940: 75 people asked, 46 ill. Public Health Service
// teaching case 401-303 ("Oswego: an outbreak of gastrointestinal illness following a church
// supper"). The tables count its line list; relative risks, odds ratios and two-sided p were
// recomputed from that list outside this code.
type Row = [
  food: string,
  illAte: number,
  wellAte: number,
  illNot: number,
  wellNot: number,
  ate: string,
  not: string,
  risk: string,
  odds: string,
  p: string,
];
const oswego: Row[] = [
  ['baked ham', 29, 17, 17, 12, '63.0', '58.6', '1.08', '1.20', '0.809'],
  ['spinach', 26, 17, 20, 12, '60.5', '62.5', '0.97', '0.92', '1.000'],
  ['mashed potato', 23, 14, 23, 14, '62.2', '62.2', '1.00', '1.00', '1.000'],
  ['cabbage salad', 18, 10, 28, 19, '64.3', '59.6', '1.08', '1.22', '0.808'],
  ['rolls', 21, 16, 25, 13, '56.8', '65.8', '0.86', '0.68', '0.482'],
  ['brown bread', 18, 9, 28, 20, '66.7', '58.3', '1.14', '1.43', '0.622'],
  ['milk', 2, 2, 44, 27, '50.0', '62.0', '0.81', '0.61', '0.638'],
  ['coffee', 19, 12, 27, 17, '61.3', '61.4', '1.00', '1.00', '1.000'],
  ['water', 13, 11, 33, 18, '54.2', '64.7', '0.84', '0.64', '0.450'],
  ['vanilla ice cream', 43, 11, 3, 18, '79.6', '14.3', '5.57', '23.45', '0.000'],
  ['fruit salad', 4, 2, 42, 27, '66.7', '60.9', '1.10', '1.29', '1.000'],
];

const table = (
  casesWith: number,
  othersWith: number,
  casesWithout: number,
  othersWithout: number,
) => ({ casesWith, othersWith, casesWithout, othersWithout }) satisfies TwoByTwo;

const percent = (part: number, rest: number) => ((100 * part) / (part + rest)).toFixed(1);

describe('Oswego church supper', () => {
  it.each(oswego)('%s: attack rates, risk ratio, odds ratio and Fisher', (...row) => {
    const [, a, b, c, d, ate, not, risk, odds, p] = row;
    const cells = table(a, b, c, d);
    expect(percent(a, b)).toBe(ate);
    expect(percent(c, d)).toBe(not);
    expect(riskRatio(cells)?.ratio.toFixed(2)).toBe(risk);
    expect(riskRatio(cells)?.oddsRatio.toFixed(2)).toBe(odds);
    expect(fisherTwoSided(cells).toFixed(3)).toBe(p);
  });

  it('finds vanilla ice cream: 5.57 (1.94 to 16.0), two-sided p 2.60e-7', () => {
    const cells = table(43, 11, 3, 18);
    const risk = riskRatio(cells);
    expect(risk?.low95.toFixed(2)).toBe('1.94');
    expect(risk?.high95.toFixed(1)).toBe('16.0');
    expect(fisherTwoSided(cells).toNumber()).toBeCloseTo(2.6e-7, 9);
  });
});

// R. A. Fisher, The Design of Experiments (1935), chapter II: the lady tasting tea.
describe("Fisher's tea tasting", () => {
  const cells = table(3, 1, 1, 3);

  it('has one-sided p 17/70, two-sided p 34/70 and odds ratio 9', () => {
    expect(fisherOneSided(cells).toFixed(6)).toBe('0.242857');
    expect(fisherTwoSided(cells).toFixed(6)).toBe('0.485714');
    expect(riskRatio(cells)?.oddsRatio).toBeCloseTo(9, 12);
  });
});

describe('the one-sided tail against a general statistics library', () => {
  it.each(oswego)('%s agrees with the hypergeometric distribution of jstat', (...row) => {
    const [, a, b, c, d] = row;
    const below = a === 0 ? 0 : jStat.hypgeom.cdf(a - 1, a + b + c + d, a + b, a + c);
    expect(fisherOneSided(table(a, b, c, d)).toNumber()).toBeCloseTo(1 - below, 9);
  });
});
