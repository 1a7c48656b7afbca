import {
  actionLevelMgPerKg,
  asIngredientMgPerKg,
  assessContacts,
  decideContacts,
  precaution,
} from '@api/domain/cross-contact';
import { textOf } from '@api/domain/declaration';
import { MARKETS } from '@api/domain/market';
import { roundTo, Decimal } from '@api/domain/units';
import { hazelnut, lot, milk, part, specify } from '../../support/labels/ingredients';

const d = (value: string | number): Decimal => new Decimal(value);

describe('FAO/WHO Ad hoc Joint Expert Consultation, Parts 2, 3 and 5: action levels', () => {
  it.each([
    ['milk', 30, '66.7'],
    ['hazelnut', 10, '300'],
    ['peanut', 50, '40'],
    ['almond', 25, '40'],
    ['wheat', 40, '125'],
  ] as const)('%s in a sitting of %s g: %s mg protein/kg', (allergen, sittingG, level) => {
    const found = actionLevelMgPerKg(allergen, d(sittingG));
    expect(found && roundTo(found, 1).toString()).toBe(level);
  });

  it('as skimmed-milk powder at 35 % protein: 190 mg/kg', () => {
    const level = actionLevelMgPerKg('milk', d(30)) ?? d(0);
    expect(roundTo(asIngredientMgPerKg(level, d(35)), 0).toString()).toBe('190');
  });

  it('an allergen without a published dose has no level', () => {
    expect(actionLevelMgPerKg('lupin', d(30))).toBe(null);
    expect(actionLevelMgPerKg('milk', d(0))).toBe(null);
  });
});

const dark = (mgPerKg: string | null) =>
  specify(
    part('dark chocolate'),
    { crossContactProteinMgPerKg: mgPerKg === null ? {} : { milk: d(mgPerKg) } },
    { milk: 'may_contain' },
  );
const assessed = (mgPerKg: string | null) =>
  assessContacts(
    { lots: [lot(dark(mgPerKg), 50), lot(specify(part('sugar')), 50)], finishedG: d(100) },
    [],
    d(30),
    MARKETS.EU,
  );
const decidedBy = (decision: 'state' | 'leave_out') =>
  [{ allergen: 'milk', decision, decidedBy: 'Ines', reason: 'tested' }] as const;

describe('precautionary statements are decided by a person with the numbers', () => {
  it('a supplier’s amount is thinned by the share of the lot', () => {
    expect(assessed('100')[0]).toMatchObject({ allergen: 'milk', verdict: 'below' });
    expect(assessed('100')[0]?.proteinMgPerKg?.toString()).toBe('50');
    expect(assessed('200')[0]?.verdict).toBe('above');
    expect(assessed(null)[0]?.verdict).toBe('unknown');
  });

  it('nothing is decided silently', () => {
    const { stated, findings } = decideContacts(assessed('100'), []);
    expect(stated).toEqual([]);
    expect(findings.map((entry) => entry.severity)).toEqual(['decision']);
  });

  it('only a known amount below its level may be left out', () => {
    const severities = (mgPerKg: string | null): string[] =>
      decideContacts(assessed(mgPerKg), decidedBy('leave_out')).findings.map((f) => f.severity);
    expect(severities('100')).toEqual(['note']);
    expect(severities('200')).toEqual(['refusal']);
    expect(severities(null)).toEqual(['refusal']);
  });

  it('is one clear sentence', () => {
    const { stated } = decideContacts(assessed('200'), decidedBy('state'));
    expect(textOf(precaution(stated, 'en') ?? [])).toBe('May contain milk.');
    expect(textOf(precaution(stated, 'fr') ?? [])).toBe('Peut contenir lait.');
  });

  it('a heel’s allergen is declared as an ingredient, and the numbers are shown', () => {
    const heel = lot(
      specify(part('milk chocolate', null, { origins: [milk] }), { allergenProteinPercent: { milk: d(6) } }),
      1,
      { via: 'heel' },
    ); // prettier-ignore
    const mix = { lots: [lot(specify(part('dark chocolate')), 99), heel], finishedG: d(100) };
    const found = assessContacts(mix, [], d(30), MARKETS.EU);
    expect(found[0]?.proteinMgPerKg?.toString()).toBe('600');
    expect(decideContacts(found, decidedBy('leave_out')).findings[0]).toMatchObject({
      code: 'allergen-from-leftover',
    }); // prettier-ignore
  });

  it('what is meant to be inside is no contact', () => {
    const paste = lot(specify(part('hazelnut paste', null, { origins: [hazelnut] })), 10);
    const line = { line: 'nut roaster', allergen: 'hazelnut', proteinMgPerKg: null } as const;
    expect(assessContacts({ lots: [paste], finishedG: d(10) }, [line], d(30), MARKETS.EU)).toEqual([]);
  }); // prettier-ignore
});
