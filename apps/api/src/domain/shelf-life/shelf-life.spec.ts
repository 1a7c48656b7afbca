import { makeUpOf } from '../composition';
import { compositionOf } from '../reference-ingredients';
import { Decimal } from '../units';
import type { RulingWaterActivity } from '../water-activity';
import { acceptLife, lifeBand, shelfLife, type LifeFacts, type StatedLife } from '.';

const d = (text: string): Decimal => new Decimal(text);
const at = (worst: string): RulingWaterActivity => ({
  basis: 'estimated',
  worst: d(worst),
  cautions: [],
});
const NONE: StatedLife = { days: null, basis: null, document: null };
const plain = makeUpOf(compositionOf({ water: 50, sucrose: 50 }), d('100'));
const nutty = makeUpOf(compositionOf({ nutFat: 60, sucrose: 40 }), d('100'));

const facts = (changes: Partial<LifeFacts>): LifeFacts => ({
  stated: NONE,
  waterActivity: at('0.87'),
  makeUp: plain,
  ph: null,
  components: [],
  isFilling: true,
  ...changes,
});

const chosen = (days: number): StatedLife => ({ days, basis: 'chosen', document: null });
const validated = (days: number): StatedLife => ({
  days,
  basis: 'validated',
  document: 'Report 7',
});

describe('bands (common practice, no source)', () => {
  it.each([
    ['0.95', 3, 7],
    ['0.90', 3, 7],
    ['0.8999', 7, 21],
    ['0.82', 21, 42],
    ['0.75', 42, 70],
    ['0.70', 60, 120],
    ['0.66', 120, 180],
    ['0.30', 180, null],
  ])('%s', (aw, low, high) => {
    const band = lifeBand(d(aw));
    expect([band.lowDays, band.highDays]).toEqual([low, high]);
  });
});

describe('life of a recipe version', () => {
  it('makes no date of an estimate, only a suggestion', () => {
    const life = shelfLife(facts({}));
    expect(life.days).toBe(null);
    expect(life.suggestedDays).toBe(7);
    expect(life.ruling?.kind).toBe('growth');
  });

  it('cuts a chosen life to what the wet end of the estimate allows', () => {
    const life = shelfLife(facts({ stated: chosen(60) }));
    expect(life.days).toBe(21);
    expect(life.ruling?.kind).toBe('growth');
    expect(life.cautions.map((row) => row.code)).toContain('life-cut');
  });

  it('keeps a choice that is shorter', () => {
    const life = shelfLife(facts({ stated: chosen(10) }));
    expect([life.days, life.ruling?.kind]).toEqual([10, 'stated']);
  });

  it('lets a test with its document stand, and says that it is longer than practice', () => {
    const life = shelfLife(facts({ stated: validated(45) }));
    expect(life.days).toBe(45);
    expect(life.cautions.map((row) => row.code)).toContain('longer-than-practice');
  });

  it('treats a test without its document as a choice', () => {
    const stated: StatedLife = { days: 45, basis: 'validated', document: '  ' };
    expect(shelfLife(facts({ stated })).days).toBe(21);
  });

  it('is cut by a component even when it was tested', () => {
    const components = [{ name: 'caramel', days: 30 }];
    expect(shelfLife(facts({ stated: validated(45), components })).days).toBe(30);
  });

  it('limits nut oil to half a year', () => {
    const none: RulingWaterActivity = { basis: 'none', worst: null, cautions: [] };
    const life = shelfLife(facts({ stated: chosen(365), makeUp: nutty, waterActivity: none }));
    expect([life.days, life.ruling?.kind]).toEqual([180, 'nut_oil']);
  });

  it('names what may grow at the wet end, the dangerous first', () => {
    const grow = shelfLife(facts({ waterActivity: at('0.95') })).mayGrow;
    expect(grow[0]?.group).toBe('pathogen');
    expect(grow.map((row) => row.organism)).toContain('Listeria monocytogenes');
  });
});

describe('accepting a life', () => {
  it('refuses a measured life without its document', () => {
    const stated: StatedLife = { days: 30, basis: 'measured', document: null };
    const result = acceptLife(facts({ stated }));
    expect(!result.ok && result.refusal.code).toBe('shelf-life-document-missing');
  });

  it('refuses a choice that goes up', () => {
    const result = acceptLife(facts({ stated: chosen(22) }));
    expect(!result.ok && result.refusal.code).toBe('shelf-life-beyond-limits');
  });

  it('accepts a choice that goes down', () => {
    expect(acceptLife(facts({ stated: chosen(21) })).ok).toBe(true);
  });
});
