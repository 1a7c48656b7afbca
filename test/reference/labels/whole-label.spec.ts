import { textOf } from '@api/domain/declaration';
import { acceptances, composeLabel, differences, type LabelAsk } from '@api/domain/label';
import { europeanDuty } from '@api/domain/nutrition';
import { Decimal } from '@api/domain/units';
import { Temporal } from 'temporal-polyfill';
import { ask, settings } from '../../support/labels/ask';
import { declarationOf, starred } from '../../support/labels/written';
import { hazelnutGanache, lot, milk, part, specify } from '../../support/labels/ingredients';

const d = (value: string | number): Decimal => new Decimal(value);

const kinds = (asked: LabelAsk): string[] =>
  composeLabel(asked).content?.blocks.map((block) => block.kind) ?? [];
const codes = (asked: LabelAsk): string[] =>
  composeLabel(asked)
    .findings.filter(({ severity }) => severity === 'refusal' || severity === 'decision')
    .map((finding) => finding.code);

describe('Regulation (EU) No 1169/2011, Articles 9, 13 and 16: what stands on the pack', () => {
  it('an ordinary pack: name, list, storage, operator, quantity, date and lot', () => {
    const { content } = composeLabel(ask(hazelnutGanache()));
    expect(content?.blocks.map((block) => block.kind)).toEqual([
      'name',
      'ingredients',
      'storage',
      'operator',
    ]);
    expect(content?.quantity?.text).toBe('125\u00a0g');
    expect(content?.date).toMatchObject({ date: '20/01/2027', machineDate: '2027-01-20' });
    expect(content?.lotMark).toBe('L2026-331-A');
    expect(content?.minXHeightMm).toBe(1.2);
  });

  it('Article 16(2): at 9.9 cm² only name, allergens, quantity and date; at 10.0 cm² all', () => {
    const sized = (cm2: string): LabelAsk =>
      ask(hazelnutGanache(), 'EU', { settings: settings({ largestSurfaceCm2: d(cm2) }) });
    expect(kinds(sized('9.9'))).toEqual(['name', 'contains', 'operator']);
    const { content } = composeLabel(sized('9.9'));
    expect(starred(content?.blocks[1]?.runs ?? [])).toBe(
      'Contains **soya**, **milk**, **hazelnut**.',
    );
    expect(kinds(sized('10.0'))).toContain('ingredients');
  });

  it('with a list, no second "Contains" (Commission Notice 2017/C 428/01, by a translated copy)', () => {
    expect(kinds(ask(hazelnutGanache()))).not.toContain('contains');
    expect(kinds(ask(hazelnutGanache(), 'US'))).toContain('contains');
  });

  it.each([
    ['24.9', false, false],
    ['25.0', false, true],
    ['25.0', true, false],
  ])('Annex V: nutrition at %s cm², small local maker %s: due %s', (cm2, smallLocalMaker, due) => {
    const facts = { makesClaim: false, usSmallBusiness: false, smallLocalMaker };
    expect(europeanDuty({ ...facts, largestSurfaceCm2: d(cm2) }).required).toBe(due);
  });

  it('a nutrition claim takes the exemption away (from memory)', () => {
    const claiming = { ...settings().nutrition, makesClaim: true };
    const asked = ask(hazelnutGanache(), 'EU', { settings: settings({ nutrition: claiming }) });
    expect(codes(asked)).toEqual(['nutrition-incomplete']);
  });

  it('two languages stand on one label, each in its own words', () => {
    const sugar = part('sugar', null, { names: { en: 'sugar', de: 'Zucker' } });
    const asked = ask([lot(specify(sugar), 10)], 'EU', {
      languages: ['en', 'de'],
      settings: settings({
        names: { en: 'Sugar drops', de: 'Zuckertropfen' },
        storage: { en: 'Keep dry', de: 'Trocken lagern' },
      }),
    });
    const texts = composeLabel(asked).content?.blocks.map((block) => textOf(block.runs));
    expect(texts).toEqual([
      'Sugar drops',
      'Ingredients: sugar.',
      'Keep dry',
      'Zuckertropfen',
      'Zutaten: Zucker.',
      'Trocken lagern',
      'Invented Workshop, 1 Example Lane, 1000 Nowhere',
    ]);
  });
});

describe('what can’t be right is refused', () => {
  const sugar = [lot(specify(part('sugar')), 10)];

  it.each<[string, LabelAsk]>([
    ['unspecified', ask([lot(specify(part('sugar')), 10, { specification: null })])],
    ['nothing-inside', ask([], 'EU', { mix: { lots: [], finishedG: d(10) } })],
    ['no-weight', ask(sugar, 'EU', { mix: { lots: sugar, finishedG: d(0) } })],
    ['language-missing', ask(sugar, 'GB', { languages: ['fr'], settings: settings({ names: { fr: 'x' } }) })],
    ['name-missing', ask(sugar, 'EU', { settings: settings({ names: {} }) })],
    ['ingredient-nameless', ask(sugar, 'EU', { languages: ['fr'], settings: settings({ names: { fr: 'x' } }) })],
    ['operator-missing', ask(sugar, 'EU', { operator: { name: 'x', addressLines: [] } })],
    ['date-before-making', ask(sugar, 'EU', { last: Temporal.PlainDate.from('2026-11-24') })],
    ['storage-missing', ask(sugar, 'EU', { dateKind: 'use_by', settings: settings({ storage: {} }) })],
    ['no-net-quantity', ask(sugar, 'EU', { settings: settings({ pack: { ...settings().pack, netG: d(0) } }) })],
    ['no-count', ask(sugar, 'EU', { settings: settings({ pack: { ...settings().pack, form: 'wrapped' } }) })],
    ['name-not-allowed', ask(sugar, 'EU', { settings: settings({ legalName: { kind: 'praline' } }) })],
    ['percentages-kept-back', ask([lot(specify(part('mix', null, { parts: [part('a')] })), 1)], 'EU', { settings: settings({ listForm: 'flattened' }) })],
  ])('%s', (code, asked) => {
    expect(codes(asked)).toContain(code);
    expect(composeLabel(asked, acceptances([{ code, subject: null }])).content).toBe(null);
  }); // prettier-ignore

  it('a use-by that has passed is refused; a best-before waits for a person', () => {
    const passed = { today: Temporal.PlainDate.from('2027-02-01') };
    const useBy = ask(sugar, 'EU', { ...passed, dateKind: 'use_by' });
    const accept = (subject: string | null) => acceptances([{ code: 'date-passed', subject }]);
    expect(composeLabel(useBy, accept('2027-01-20')).content).toBe(null);
    const before = ask(sugar, 'EU', passed);
    expect(composeLabel(before).content).toBe(null);
    expect(composeLabel(before, accept('2027-01-20')).content).not.toBe(null);
    expect(composeLabel(before, accept('2027-01-19')).content).toBe(null);
    expect(composeLabel(before, accept(null)).content).toBe(null);
  });

  it('an undecided cross-contact can’t be accepted away', () => {
    const unsure = specify(part('sugar'), {}, { peanut: 'may_contain' });
    const asked = ask([lot(unsure, 10)]);
    const accepted = acceptances([{ code: 'contact-undecided', subject: 'peanut' }]);
    expect(composeLabel(asked, accepted).content).toBe(null);
  });
});

describe('as made against as designed', () => {
  const compare = (made: ReturnType<typeof hazelnutGanache>, madeLast = '2027-01-20') =>
    differences({
      designed: declarationOf(hazelnutGanache()),
      made: declarationOf(made),
      designedLast: Temporal.PlainDate.from('2027-01-20'),
      madeLast: Temporal.PlainDate.from(madeLast),
      toleratedPoints: d(1),
    }).map((finding) => `${finding.severity} ${finding.code}`);

  it('says nothing when nothing differs', () => {
    expect(compare(hazelnutGanache())).toEqual([]);
  });

  it('keeps another allergen and a longer date back for a decision', () => {
    const peanut = lot(specify(part('paste', null, { origins: [{ allergen: 'peanut' }] })), 5);
    expect(compare([...hazelnutGanache(), peanut], '2027-01-21')).toEqual([
      'decision differs-allergen',
      'decision differs-date',
      'warning differs-added',
    ]);
  });

  it('shows a missing line, a changed weight and a changed order', () => {
    const [dark, cream, ...rest] = hazelnutGanache();
    const more = lot(specify(part('cream', null, { origins: [milk] })), 450);
    expect(compare([dark, more, ...rest].filter((entry) => entry !== undefined))).toContain(
      'warning differs-order',
    );
    expect(compare([dark, cream].filter((entry) => entry !== undefined))).toContain(
      'warning differs-missing',
    );
  });
});
