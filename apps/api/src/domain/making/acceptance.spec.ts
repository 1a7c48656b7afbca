import { checkAcceptance, type ForeignDraw } from './acceptance';

const hazelnut = { allergen: 'hazelnut', after: 'contains' };
const milk = { allergen: 'milk', after: 'unknown' };
const draw: ForeignDraw = {
  batchCode: 'B-1',
  lotCode: 'L-1',
  itemName: 'Hazelnut paste',
  insteadOf: 'Almond paste',
  tankName: null,
  worse: [hazelnut, milk],
};

const openOf = (result: ReturnType<typeof checkAcceptance>): unknown =>
  result.ok ? [] : result.refusal.facts?.['notAccepted'];

describe('something that the recipe does not name', () => {
  it('is refused when nobody accepted what changes, and every allergen is told', () => {
    const result = checkAcceptance(draw, null, { figures: [] });
    expect(openOf(result)).toEqual(draw.worse);
    expect(!result.ok && result.refusal.facts).toMatchObject({ lotCode: 'L-1', figures: [] });
  });

  it('is refused when one allergen was not accepted', () => {
    expect(openOf(checkAcceptance(draw, { allergens: [hazelnut] }, {}))).toEqual([milk]);
  });

  it('is refused when it was accepted as less than it is', () => {
    const trace = { allergen: 'hazelnut', after: 'may_contain' };
    const result = checkAcceptance(draw, { allergens: [trace, milk] }, {});
    expect(openOf(result)).toEqual([hazelnut]);
  });

  it('is let in when all was accepted', () => {
    expect(checkAcceptance(draw, { allergens: draw.worse }, {}).ok).toBe(true);
  });

  it('is asked about although no allergen gets worse', () => {
    const harmless = { ...draw, insteadOf: null, worse: [] };
    expect(checkAcceptance(harmless, null, {}).ok).toBe(false);
    expect(checkAcceptance(harmless, { allergens: [] }, {}).ok).toBe(true);
  });
});
