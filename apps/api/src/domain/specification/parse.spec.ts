import { parseSpecification, specificationToJson } from '.';

const cream = (): Record<string, unknown> => ({
  ingredient: { names: { en: 'cream' }, origins: [{ allergen: 'milk' }] },
  allergens: { milk: 'contains' },
});

const problemsOf = (json: unknown): string[] => {
  const parsed = parseSpecification(json);
  return parsed.ok ? [] : parsed.problems.map(({ pointer, message }) => `${pointer} ${message}`);
};

const named = (name: string, parts: unknown[] = [], percent?: string): unknown => ({
  names: { en: name },
  parts,
  ...(percent === undefined ? {} : { percent }),
});

describe('parseSpecification', () => {
  it('reads what it wrote', () => {
    const parsed = parseSpecification(cream());
    if (!parsed.ok) throw new Error('cream must parse');
    const json: unknown = JSON.parse(JSON.stringify(specificationToJson(parsed.value)));
    expect(parseSpecification(json)).toEqual(parsed);
  });

  it('reads what is not stated as unknown, not as absent', () => {
    const parsed = parseSpecification(cream());
    expect(parsed.ok && parsed.value.allergens.peanut).toBe(undefined);
    expect(parsed.ok && parsed.value.composition).toBe(null);
  });

  it('refuses percentages that sum to more than 100', () => {
    const parts = [named('sugar', [], '60.1'), named('cocoa mass', [], '40')];
    expect(problemsOf({ ...cream(), ingredient: named('chocolate', parts) })[0]).toBe(
      '/ingredient/parts percentages must not exceed 100; they sum to 100.1',
    );
  });

  it('refuses an ingredient that is inside itself', () => {
    const circle = named('praline', [named('paste', [named('Praline')])]);
    expect(problemsOf({ ingredient: circle, allergens: {} })).toEqual([
      '/ingredient/parts/0/parts/0/names must not be an ingredient of itself',
    ]);
  });

  it('refuses nesting without end, and does not follow it', () => {
    let node = named('level 20');
    for (let level = 19; level >= 0; level -= 1) node = named(`level ${level}`, [node]);
    expect(problemsOf({ ingredient: node, allergens: {} })).toHaveLength(1);
  });

  it.each([
    ['a'.repeat(500), 'at most 200 characters'],
    ['su\u202egar', 'control or direction characters'],
    ['su\u0000gar', 'control or direction characters'],
    ['\u05e1\u05d5\u05db\u05e8', 'from left to right'],
    ['  ', 'must not be empty'],
  ])('refuses the name %j', (name, message) => {
    expect(problemsOf({ ingredient: named(name), allergens: {} })[0]).toContain(message);
  });

  it('refuses an allergen table that contradicts the ingredients, either way', () => {
    expect(problemsOf({ ...cream(), allergens: { milk: 'absent' } })[0]).toContain('/milk');
    expect(problemsOf({ ...cream(), allergens: { milk: 'contains', egg: 'contains' } })).toEqual([
      '/allergens/egg is "contains", so the ingredient that it is in must name it as its origin',
    ]);
  });

  it('refuses a composition that does not come to 100 g', () => {
    const short = { ...cream(), composition: { water: '60', fat: { milkFat: '35' } } };
    expect(problemsOf(short)[0]).toContain('accounts for 95 g');
  });

  it('refuses numbers where a decimal text is due, and fields that it does not know', () => {
    const wrong = { ...cream(), nutrition: { fat: 35, sugar: '1' } };
    expect(problemsOf(wrong).map((text) => text.split(' ')[0])).toEqual([
      '/nutrition/sugar',
      '/nutrition/fat',
    ]);
  });

  it.each([null, 7, 'text', [], { ingredient: null }, { ingredient: { names: [] } }])(
    'answers %j with problems and never throws',
    (json) => {
      expect(problemsOf(json).length).toBeGreaterThan(0);
    },
  );
});
