import { Decimal } from '../units';
import { flowOf, massYield, scaleRecipe, scaleTree, type ScalableRecipe, type StepLoss } from '.';

const d = (value: number | string): Decimal => new Decimal(value);
const line = (itemId: string, quantity: number, role = 'base', unit: 'g' | 'pc' = 'g') => ({
  itemId,
  unit,
  quantity: d(quantity),
  role,
});
const recipe = (changes: Partial<ScalableRecipe>): ScalableRecipe => ({
  lines: [],
  losses: [],
  yieldMassG: null,
  yieldPieces: null,
  cavitiesPerTray: null,
  ...changes,
});

describe('a recipe kept by weight', () => {
  const infused = recipe({
    lines: [line('cream', 1000), line('tea', 40, 'infusion'), line('dark', 1500)],
    losses: [
      { step: 'boil', kind: 'steam', percent: d('2.8'), afterLine: 2 },
      { step: 'strain', kind: 'held_back', percent: d(0), afterLine: 2, retentionRatio: d('2.2') },
    ],
  });

  it('yields its lines less steam, what is held back, and the infusion itself', () => {
    const yields = massYield(infused);
    expect(yields.ok && yields.value.toFixed(3)).toBe('2384.000');
  });

  it('refuses a step that loses everything', () => {
    const all: StepLoss = { step: 'spill', kind: 'other', percent: d(100) };
    const flow = flowOf([{ massG: d(10), infusion: false }], [all]);
    expect(!flow.ok && flow.refusal.code).toBe('step-loses-everything');
  });

  it('refuses pieces, and refuses nothing at all', () => {
    expect(scaleRecipe(infused, { kind: 'pieces', pieces: d(10) }).ok).toBe(false);
    expect(scaleRecipe(infused, { kind: 'grams', massG: d(0) }).ok).toBe(false);
    expect(scaleRecipe(recipe({}), { kind: 'grams', massG: d(10) }).ok).toBe(false);
  });
});

describe('box → pieces → fillings', () => {
  const recipes = new Map([
    ['box', recipe({ lines: [line('a', 6, 'slot', 'pc'), line('b', 6, 'slot', 'pc'), line('lid', 1, 'packaging', 'pc')], yieldPieces: 1 })],
    ['a', recipe({ lines: [line('ganache', 120, 'filling')], yieldPieces: 24, cavitiesPerTray: 24 })],
    ['b', recipe({ lines: [line('ganache', 100, 'filling')], yieldPieces: 20, cavitiesPerTray: 20 })],
    ['ganache', recipe({ lines: [line('cream', 500), line('dark', 500)] })],
  ]); // prettier-ignore

  it('casts whole trays and cooks a shared filling once', () => {
    const tree = scaleTree('box', { kind: 'pieces', pieces: d(10) }, recipes);
    if (!tree.ok) throw new Error(tree.refusal.detail);
    const trays = new Map(tree.value.stages.map((stage) => [stage.itemId, stage.recipe.trays]));
    expect([trays.get('a'), trays.get('b')]).toEqual([3, 3]);
    expect(tree.value.stages.filter((stage) => stage.itemId === 'ganache')).toHaveLength(1);
    expect(tree.value.fromStore.get('cream')?.toFixed(3)).toBe('330.000');
    expect(tree.value.fromStore.get('lid')?.toNumber()).toBe(10);
    expect(tree.value.fromStore.has('ganache')).toBe(false);
  });

  it('says which recipe can’t be scaled', () => {
    const broken = new Map([...recipes, ['ganache', recipe({})]]);
    const tree = scaleTree('box', { kind: 'pieces', pieces: d(10) }, broken);
    expect(!tree.ok && tree.refusal.facts?.['item']).toBe('ganache');
  });
});
