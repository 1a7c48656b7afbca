import { REFERENCE_CAUTION, REFERENCE_INGREDIENTS } from '.';

describe('generic compositions', () => {
  it('are at least 35, each with a key of its own, a source and names in two languages', () => {
    expect(REFERENCE_INGREDIENTS.length).toBeGreaterThanOrEqual(35);
    expect(new Set(REFERENCE_INGREDIENTS.map((row) => row.key)).size).toBe(
      REFERENCE_INGREDIENTS.length,
    );
    for (const row of REFERENCE_INGREDIENTS) {
      expect([row.source, row.names.en, row.names.fr].every((text) => text.length > 2)).toBe(true);
    }
  });

  it('are flagged when they don’t come to 97–103 g', () => {
    for (const row of REFERENCE_INGREDIENTS) {
      const grams = row.statedGrams.toNumber();
      expect(row.flagged).toBe(grams < 97 || grams > 103);
    }
    const flagged = REFERENCE_INGREDIENTS.filter((row) => row.flagged).map((row) => row.key);
    expect(flagged).toContain('pistachio-roasted');
    expect(flagged).not.toContain('cream-35');
  });

  it('count salt once', () => {
    const milk = REFERENCE_INGREDIENTS.find((row) => row.key === 'skimmed-milk-powder');
    expect(milk?.composition.ash.plus(milk.composition.salt).toNumber()).toBeCloseTo(7.93, 6);
  });

  it('say that they know nothing of allergens', () => {
    expect(REFERENCE_CAUTION).toContain('allergens');
  });
});
