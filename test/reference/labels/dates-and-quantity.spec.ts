import { dateMark, lotMark, lotMarkRequired, machineDayOf, type DateAsk } from '@api/domain/dates';
import { MARKETS } from '@api/domain/market';
import {
  judgeBatch,
  limitsOf,
  minDigitHeightMm,
  minXHeightMm,
  netWeightUs,
  panelAreaOf,
  panelTypeHeightMm,
  quantityMark,
  type PackContents,
} from '@api/domain/quantity';
import { Decimal } from '@api/domain/units';
import { Temporal } from 'temporal-polyfill';

const d = (value: string | number): Decimal => new Decimal(value);
const day = (text: string): Temporal.PlainDate => Temporal.PlainDate.from(text);

const mark = (madeOn: string, last: string, more: Partial<DateAsk> = {}) =>
  dateMark({
    madeOn: day(madeOn),
    last: day(last),
    kind: 'best_before',
    form: 'shortest',
    languages: ['en'],
    ...more,
  });
const printed = (...args: Parameters<typeof mark>): string => {
  const { words, date } = mark(...args);
  return `${words[0]?.text ?? ''} ${date}`;
};

describe('Regulation (EU) No 1169/2011, Article 24 and Annex X: date marks', () => {
  it('up to three months: day and month', () => {
    expect(printed('2026-12-01', '2027-02-28')).toBe('Best before 28/02');
  });

  it('longer: month and year, the month that has wholly passed, so that no life is added', () => {
    expect(printed('2026-12-01', '2027-03-02')).toBe('Best before end 02/2027');
    expect(printed('2026-12-01', '2027-03-31')).toBe('Best before end 03/2027');
    expect(mark('2026-12-01', '2027-03-02').machineDate).toBe('2027-02-28');
  });

  it('eighteen months exactly is month and year; a day more may be the year', () => {
    expect(printed('2026-01-31', '2027-07-31')).toBe('Best before end 07/2027');
    expect(printed('2026-07-01', '2028-01-02')).toBe('Best before end 2027');
  });

  it('an end form never names a time before the food was made', () => {
    expect(printed('2026-11-15', '2027-02-20')).toBe('Best before end 01/2027');
    expect(printed('2026-01-15', '2027-07-20')).toBe('Best before end 2026');
    expect(printed('2026-06-10', '2026-06-20')).toBe('Best before 20/06');
  });

  it('"best before end 12/2027" means 31 December 2027', () => {
    expect(machineDayOf(Temporal.PlainYearMonth.from('2027-12')).toString()).toBe('2027-12-31');
  });

  it('a use-by has day, month and year', () => {
    expect(printed('2026-11-25', '2026-12-05', { kind: 'use_by' })).toBe('Use by 05/12/2026');
  });

  it('names the month where day and month would be taken for each other (safe form)', () => {
    const date = (form: 'full' | 'shortest', last: string): string =>
      mark('2026-12-01', last, { form, market: MARKETS.US }).date;
    expect(date('full', '2027-11-01')).toBe('NOV 1, 2027');
    expect(date('shortest', '2027-02-28')).toBe('FEB 28');
    expect(date('shortest', '2027-03-31')).toBe('MAR 2027');
  });

  it('a full date is always allowed, in every language', () => {
    const { words, date } = mark('2026-12-01', '2029-02-28', {
      form: 'full',
      languages: ['fr', 'de'],
    });
    expect([...words.map((word) => word.text), date]).toEqual([
      'À consommer de préférence avant le',
      'Mindestens haltbar bis',
      '28/02/2029',
    ]);
  });
});

describe('Directive 2011/91/EU: lot marks (from memory)', () => {
  it('a date with day and month can stand for the lot; month and year can’t', () => {
    expect(lotMarkRequired(mark('2026-12-01', '2027-02-28', { form: 'full' }), 100)).toBe(false);
    expect(lotMarkRequired(mark('2026-12-01', '2027-03-02'), 100)).toBe(true);
    expect(lotMarkRequired(mark('2026-12-01', '2027-03-02'), 9.9)).toBe(false);
  });

  it('stands behind an L', () => {
    expect(lotMark('2026-331-A')).toBe('L2026-331-A');
  });
});

const pack = (netG: string, more: Partial<PackContents> = {}): string | null =>
  quantityMark(
    { netG: d(netG), form: 'loose', count: null, largeUnit: 'kg', ...more },
    MARKETS.EU,
    {
      eMarkEarned: false,
      panelAreaCm2: d(100),
      language: 'en',
    },
  )?.text.replaceAll('\u00a0', ' ') ?? null;

describe('Regulation (EU) No 1169/2011, Article 23 and Annex IX: net quantity', () => {
  it('is not due under 5 g', () => {
    expect(pack('4.9')).toBe(null);
    expect(pack('5')).toBe('5 g');
  });

  it('packs of packs: number and each, or total and number', () => {
    expect(pack('120', { form: 'singles', count: 6 })).toBe('6 × 20 g');
    expect(pack('240', { form: 'wrapped', count: 24 })).toBe('240 g, 24 pieces');
    expect(pack('125', { form: 'loose', count: 12 })).toBe('125 g');
    expect(pack('10', { form: 'by_number', count: 3 })).toBe('3 pieces');
  });

  it('from a kilogram on in kilograms or grams, as set', () => {
    expect(pack('1500')).toBe('1.5 kg');
    expect(pack('1500', { largeUnit: 'g' })).toBe('1500 g');
  });

  it('Article 13: x-height by the largest surface, 79.9 and 80.0 cm²', () => {
    expect(minXHeightMm(d('79.9'))).toBe(0.9);
    expect(minXHeightMm(d('80.0'))).toBe(1.2);
  });
});

describe('Directive 76/211/EEC, Annex I', () => {
  it.each([
    ['45', '4.1', '40.9', '36.8'],
    ['50', '4.5', '45.5', '41'],
    ['75', '4.5', '70.5', '66'],
    ['100', '4.5', '95.5', '91'],
    ['180', '8.1', '171.9', '163.8'],
    ['200', '9', '191', '182'],
    ['250', '9', '241', '232'],
    ['300', '9', '291', '282'],
    ['500', '15', '485', '470'],
    ['750', '15', '735', '720'],
    ['1000', '15', '985', '970'],
    ['2000', '30', '1970', '1940'],
  ])('nominal %s g: error %s, T1 %s, T2 %s (rounding up from memory)', (nominal, ...expected) => {
    const limits = limitsOf(d(nominal));
    expect([limits?.errorG, limits?.t1G, limits?.t2G].map(String)).toEqual(expected);
  });

  it('covers 5 g to 10 kg', () => {
    expect([limitsOf(d('4.9')), limitsOf(d('10000.1'))]).toEqual([null, null]);
  });

  it.each([
    ['50', 2],
    ['50.1', 3],
    ['200', 3],
    ['200.1', 4],
    ['1000', 4],
    ['1000.1', 6],
  ])('%s g has figures of at least %s mm', (netG, height) => {
    expect(minDigitHeightMm(d(netG))).toBe(height);
  });

  it('the e-mark is 3 mm and needs an accepted batch and a market that has it', () => {
    const contents: PackContents = { netG: d(125), form: 'loose', count: null, largeUnit: 'g' };
    const settings = { eMarkEarned: true, panelAreaCm2: d(100), language: 'en' } as const;
    expect(quantityMark(contents, MARKETS.EU, settings)).toMatchObject({ eMark: true, minEMarkHeightMm: 3 }); // prettier-ignore
    expect(quantityMark(contents, MARKETS.EU, { ...settings, eMarkEarned: false })?.eMark).toBe(false); // prettier-ignore
    expect(quantityMark(contents, MARKETS.US, settings)?.eMark).toBe(false);
  });
});

describe('Directive 76/211/EEC, Annex II (tables in the French order of 20 October 1978)', () => {
  const weights = (count: number, below: number, usual = '125.5'): Decimal[] =>
    Array.from({ length: count }, (_, index) => d(index < below ? '118' : usual));
  const judge = (batchSize: number, netWeightsG: Decimal[], destructive = false) =>
    judgeBatch({ nominalG: d(125), batchSize, netWeightsG, destructive }).verdict;

  it('under 100 packs every one is weighed and the mean reaches the nominal weight', () => {
    expect(judge(40, weights(39, 0))).toMatchObject({ state: 'weigh_more', more: 1 });
    expect(judge(40, weights(40, 0, '125')).state).toBe('accepted');
    expect(judge(40, weights(40, 0, '124.99')).state).toBe('rejected');
  });

  it.each([
    [300, 30, 1, 'accepted'],
    [300, 30, 2, 'weigh_more'],
    [300, 30, 3, 'rejected'],
    [300, 60, 4, 'accepted'],
    [300, 60, 5, 'rejected'],
    [800, 50, 2, 'accepted'],
    [800, 50, 3, 'weigh_more'],
    [800, 50, 5, 'rejected'],
    [800, 100, 6, 'accepted'],
    [800, 100, 7, 'rejected'],
    [5000, 80, 3, 'accepted'],
    [5000, 80, 7, 'rejected'],
    [5000, 160, 8, 'accepted'],
    [5000, 160, 9, 'rejected'],
  ])('of %s packs, %s weighed, %s below T1: %s', (batchSize, sample, below, state) => {
    expect(judge(batchSize, weights(sample, below, '127')).state).toBe(state);
  });

  it('destructive: twenty, one defective allowed', () => {
    expect(judge(200, weights(20, 1, '127'), true).state).toBe('accepted');
    expect(judge(200, weights(20, 2, '127'), true).state).toBe('rejected');
  });

  it('the mean of thirty may lie 0.503 deviations under the nominal weight', () => {
    const spread = (centre: string): Decimal[] =>
      Array.from({ length: 30 }, (_, index) => d(centre).plus(index % 2 === 0 ? 1 : -1));
    // Deviation 1.0171 g (n − 1), so the limit is 125 − 0.5116 g.
    expect(judge(300, spread('124.49')).state).toBe('accepted');
    expect(judge(300, spread('124.48')).state).toBe('rejected');
  });

  // Thirty and twenty packs of 100 g whose deviation is 1.2 g: limits 99.3964 g and 99.232 g.
  it.each([
    [30, false, '99.40', 'accepted'],
    [30, false, '99.39', 'rejected'],
    [20, true, '99.24', 'accepted'],
    [20, true, '99.23', 'rejected'],
  ] as const)('%s packs, destructive %s, mean %s g: %s', (sample, destroyed, mean, state) => {
    const step = d('1.2').times(
      d(sample - 1)
        .dividedBy(sample)
        .sqrt(),
    );
    const netWeightsG = Array.from({ length: sample }, (_, index) =>
      index % 2 === 0 ? d(mean).plus(step) : d(mean).minus(step),
    );
    const test = judgeBatch({
      nominalG: d(100),
      batchSize: 300,
      netWeightsG,
      destructive: destroyed,
    });
    expect(test.deviationG?.toFixed(6)).toBe('1.200000');
    expect(test.verdict.state).toBe(state);
  });

  it('no pack below T2 passes', () => {
    const one = weights(40, 0, '126');
    one[0] = d('110');
    expect(judge(40, one)).toMatchObject({ state: 'rejected' });
  });

  it('a batch of more than 10 000 is not judged', () => {
    expect(judge(10_001, weights(80, 0)).state).toBe('not_judged');
  });
});

describe('21 CFR 101.7 and 101.1 (from memory; panel area by 16 CFR 500.21)', () => {
  it.each([
    ['100', 'Net Wt 3.5 oz (100 g)'],
    ['250', 'Net Wt 8.8 oz (250 g)'],
    ['500', 'Net Wt 17.6 oz (1.1 lb) (500 g)'],
  ])('%s g is %s', (netG, text) => {
    expect(netWeightUs(d(netG)).replaceAll('\u00a0', ' ')).toBe(text);
  });

  it('5.0 square inches take 1/16 inch, 5.1 take 1/8', () => {
    expect(panelTypeHeightMm(d('5').times('6.4516'))).toBeCloseTo(25.4 / 16, 6);
    expect(panelTypeHeightMm(d('5.1').times('6.4516'))).toBeCloseTo(25.4 / 8, 6);
  });

  it('a cylinder counts 40 % of its mantle', () => {
    expect(panelAreaOf('cylinder', d(200)).toString()).toBe('80');
  });
});
