import { Temporal } from 'temporal-polyfill';
import { lotDate, mayFreeze, thawedDate, type DatedDraw, type LotDateFacts } from '.';

const day = (text: string): Temporal.PlainDate => Temporal.PlainDate.from(text);

const cream: DatedDraw = {
  lotCode: 'C-1',
  itemName: 'cream',
  capsDate: true,
  bestBefore: null,
  useBy: day('2026-12-03'),
};

const facts = (changes: Partial<LotDateFacts> = {}): LotDateFacts => ({
  madeOn: day('2026-11-25'),
  dateKind: 'best_before',
  shelfLifeDays: 21,
  lifeName: 'Dark ganache v2, validated',
  draws: [],
  ...changes,
});

describe('date of a made lot', () => {
  it('is the day of making plus the life of the recipe version', () => {
    expect(lotDate(facts()).day?.toString()).toBe('2026-12-16');
  });

  it('is cut by a drawn lot whose item caps', () => {
    const date = lotDate(facts({ draws: [cream] }));
    expect(date.day?.toString()).toBe('2026-12-03');
    expect(date.reasons.filter((line) => line.rules).map((line) => line.lotCode)).toEqual(['C-1']);
  });

  it('names a lot that caps nothing, without using it', () => {
    const date = lotDate(facts({ draws: [{ ...cream, capsDate: false }] }));
    expect(date.day?.toString()).toBe('2026-12-16');
    expect(date.reasons.map((line) => line.kind)).toEqual(['recipe_life', 'does_not_cap']);
  });

  it('takes the earlier of a lot’s two dates', () => {
    const draw = { ...cream, bestBefore: day('2026-12-01') };
    expect(lotDate(facts({ draws: [draw] })).day?.toString()).toBe('2026-12-01');
  });

  it('is none when no life is stated and nothing inside has a date', () => {
    const date = lotDate(facts({ shelfLifeDays: null, draws: [{ ...cream, useBy: null }] }));
    expect(date.day).toBe(null);
    expect(date.reasons.some((line) => line.rules)).toBe(false);
  });

  it('lists a lot once that was drawn twice', () => {
    expect(lotDate(facts({ draws: [cream, cream] })).reasons).toHaveLength(2);
  });

  it('crosses the end of February', () => {
    const made = day('2028-02-20');
    expect(lotDate(facts({ madeOn: made, shelfLifeDays: 10 })).day?.toString()).toBe('2028-03-01');
  });
});

describe('freezing', () => {
  const lot = {
    code: 'G-1',
    day: day('2026-12-16'),
    frozenOn: null,
    thawedOn: null,
    lifeAfterThawDays: 7,
  };
  const frozen = { ...lot, frozenOn: day('2026-11-26') };

  it('stops the clock: on thawing at most the recipe’s days are left', () => {
    const thawed = thawedDate(frozen, day('2027-02-01'));
    expect(thawed.ok && thawed.value.day.toString()).toBe('2027-02-08');
  });

  it('never gives more days than were left', () => {
    const late = { ...lot, frozenOn: day('2026-12-14') };
    const thawed = thawedDate(late, day('2027-02-01'));
    expect(thawed.ok && thawed.value.day.toString()).toBe('2027-02-03');
  });

  it.each([
    ['without a rule in the recipe', { ...lot, lifeAfterThawDays: null }, 'freezing-not-allowed'],
    ['a second time', { ...frozen, thawedOn: day('2026-11-28') }, 'frozen-once-already'],
    ['after its date', { ...lot, day: day('2026-11-20') }, 'frozen-too-late'],
    ['without a date', { ...lot, day: null }, 'frozen-too-late'],
  ])('is refused %s', (_, what, code) => {
    const result = mayFreeze(what, day('2026-11-25'));
    expect(!result.ok && result.refusal.code).toBe(code);
  });

  it.each([
    ['never frozen', lot],
    ['thawed already', { ...frozen, thawedOn: day('2026-12-01') }],
    ['frozen later', { ...lot, frozenOn: day('2027-03-01') }],
  ])('thawing is refused for a lot %s', (_, what) => {
    expect(thawedDate(what, day('2027-02-01')).ok).toBe(false);
  });
});
