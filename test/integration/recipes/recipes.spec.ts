import { startTestService, type TestService } from '../../support/service/test-service';
import { addItem, addSupplier } from '../../support/workshop/fixtures';
import { addIngredient } from '../../support/workshop/label-kitchen';
import { type Analysis, genericItems, line, type Version } from './recipe-kitchen';

const KEYS = [
  'cream-35', 'dark-chocolate-60-69', 'glucose-syrup-de-40', 'invert-sugar', 'butter-unsalted', 'tea-leaf',
] as const; // prettier-ignore

let service: TestService;
let items: Record<(typeof KEYS)[number], string>;
let supplierId: string;
let ganache: string;
let piece: string;
let box: string;

beforeAll(async () => {
  service = await startTestService();
  supplierId = (await addSupplier(service)).id;
  items = await genericItems(service, KEYS);
  ganache = (await addItem(service, { name: 'Trial ganache', kind: 'filling' })).id;
  piece = (await addItem(service, { name: 'Trial dome', kind: 'piece' })).id;
  box = (await addItem(service, { name: 'Trial box', kind: 'box' })).id;
});
afterAll(() => service.close());

const draft = () => ({
  lines: [
    line(items['cream-35'], '1000'),
    line(items['tea-leaf'], '40', 'infusion'),
    line(items['dark-chocolate-60-69'], '1500'),
    line(items['glucose-syrup-de-40'], '200'),
    line(items['butter-unsalted'], '200'),
  ],
  expectedLosses: [
    { step: 'boil', kind: 'steam', percent: '2.8', afterLine: 2 },
    { step: 'strain', kind: 'held_back', percent: '0', retentionRatio: '2.2', afterLine: 2 },
  ],
  ganacheUse: 'moulded',
});

const write = (itemId: string, recipe: object) =>
  service.as.maker.post(`/items/${itemId}/recipes`, recipe);
const analyse = async (itemId: string, recipe: object): Promise<Analysis> =>
  (await service.as.auditor.post('/recipes/analysis', { itemId, recipe }).expect(200))
    .body as Analysis;
const codes = (analysis: Analysis): string[] => analysis.cautions.map((row) => row.code);

describe('a draft', () => {
  it('is analysed without being saved: losses, estimate with its error, balance, cautions', async () => {
    const analysis = await analyse(ganache, draft());
    // 1000 − 28 − 88 + 1500 + 200 + 200
    expect(analysis.composition.outputGrams).toBe('2784.000');
    const sum = analysis.composition.parts.reduce((all, row) => all + Number(row.gramsPer100g), 0);
    expect(sum).toBeCloseTo(100, 1);
    expect(analysis.waterActivity).toMatchObject({ status: 'estimated', error: '0.0300' });
    expect(analysis.balance).toHaveLength(7);
    expect(codes(analysis)).toEqual(
      expect.arrayContaining(['estimate-not-measurement', 'generic-composition', 'as-designed']),
    );
    const none = await service.as.auditor.get(`/items/${ganache}/recipes`).expect(200);
    expect(none.body).toEqual([]);
  });

  it('says the energy of 100 g once every ingredient states its nutrients', async () => {
    const nutrition = { fat: '40', saturates: '24', carbohydrate: '45', sugars: '38', fibre: '5' };
    const ingredient = { names: { en: 'dark chocolate' } };
    const dark = await addIngredient(service, supplierId, 'Dark', {
      ingredient,
      nutrition: { ...nutrition, protein: '8', salt: '0.02' },
    });
    const whole = await analyse(ganache, { lines: [line(dark, '500')] });
    // Regulation (EU) 1169/2011, Annex XIV: 40 × 37 + 45 × 17 + 8 × 17 + 5 × 8 kJ, 9, 4, 4, 2 kcal.
    expect(whole.energy).toEqual({ kJ: '2421.0', kcal: '582.0' });
    const mixed = await analyse(ganache, {
      lines: [line(dark, '500'), line(items['tea-leaf'], '5')],
    });
    expect(mixed.energy).toBeNull();
  });

  it('makes no date of an estimate', async () => {
    const { shelfLife } = await analyse(ganache, draft());
    expect(shelfLife.days).toBeNull();
    expect(shelfLife.suggestedDays).toBe(3);
  });

  it('says that allergens nobody stated are unknown', async () => {
    const analysis = await analyse(ganache, draft());
    expect(analysis.allergens.find((row) => row.allergen === 'milk')?.presence).toBe('unknown');
    expect(codes(analysis)).toContain('allergens-unknown');
  });

  it('gives no number when an ingredient’s composition isn’t stated', async () => {
    const mystery = (await addItem(service, { name: 'Mystery paste', kind: 'ingredient' })).id;
    const recipe = { lines: [...draft().lines, line(mystery, '500')] };
    const { waterActivity } = await analyse(ganache, recipe);
    expect(waterActivity).toMatchObject({ status: 'outside', value: null, worst: null });
    expect(waterActivity.reason).toContain('isn’t stated');
  });

  it('says why it has no cost, naming the ingredient', async () => {
    const { cost } = await analyse(ganache, draft());
    expect(cost.costPerUnit).toBeNull();
    expect(cost.missing).toContain('Trial ');
  });

  it.each([
    ['no lines', { lines: [] }, 400],
    ['a field that nobody knows', { lines: [], sweetness: '3' }, 400],
    ['a quantity of nought', { lines: [{ quantity: '0', role: 'base' }] }, 422],
    ['a number in place of text', { lines: [{ quantity: 5, role: 'base' }] }, 400],
    ['a role that there isn’t', { lines: [{ quantity: '5', role: 'glue' }] }, 400],
  ])('is refused with a problem: %s', async (_, recipe, status) => {
    const lines = recipe.lines.map((row) => ({ itemId: items['cream-35'], ...row }));
    const answer = await service.as.maker.post('/recipes/analysis', {
      itemId: ganache,
      recipe: { ...recipe, lines },
    });
    expect(answer.status).toBe(status);
    expect(answer.headers['content-type']).toContain('application/problem+json');
  });

  it('is refused when it boils off more than its water', async () => {
    const losses = [{ step: 'boil', kind: 'steam', percent: '80', afterLine: 1 }];
    const recipe = { lines: [line(items['cream-35'], '100')], expectedLosses: losses };
    const answer = await service.as.maker.post('/recipes/analysis', { itemId: ganache, recipe });
    expect(answer.status).toBe(422);
    expect(answer.body).toMatchObject({ type: '/problems/more-steam-than-water' });
  });
});

describe('a recipe', () => {
  let first: Version;

  it('is saved as version 1 with the yield that its losses leave', async () => {
    const answer = await write(ganache, draft()).expect(201);
    first = answer.body as Version;
    expect(first).toMatchObject({ number: 1, yieldGrams: '2784.000', frozen: false });
  });

  it('refuses a life that a person chose beyond what its limits allow', async () => {
    const answer = await write(ganache, {
      ...draft(),
      shelfLifeDays: 30,
      shelfLifeBasis: 'chosen',
    });
    expect(answer.status).toBe(422);
    expect(answer.body).toMatchObject({
      type: '/problems/shelf-life-beyond-limits',
      facts: { allowedDays: 7 },
    });
  });

  it('refuses a validated life without its document, and takes it with one', async () => {
    const tested = { ...draft(), shelfLifeDays: 30, shelfLifeBasis: 'validated' };
    const answer = await write(ganache, tested);
    expect(answer.body).toMatchObject({ type: '/problems/shelf-life-document-missing' });
    const document = 'Storage test 7 of 2026-09-01';
    const second = await write(ganache, { ...tested, shelfLifeDocument: document }).expect(201);
    expect((second.body as Version).number).toBe(2);
    const analysis = await service.as.seller
      .get(`/recipes/${(second.body as Version).id}/analysis`)
      .expect(200);
    expect((analysis.body as Analysis).shelfLife.days).toBe(30);
    expect(codes(analysis.body as Analysis)).toContain('longer-than-practice');
  });

  it('is compared side by side with another version', async () => {
    const other = { ...draft(), lines: draft().lines.slice(0, 4) };
    const third = (await write(ganache, other).expect(201)).body as Version;
    const answer = await service.as.auditor
      .get(`/recipes/${first.id}/comparison/${third.id}`)
      .expect(200);
    const { lines } = answer.body as { lines: { itemName: string; kind: string }[] };
    expect(lines.find((row) => row.itemName.includes('butter'))?.kind).toBe('removed');
  });

  it('is changed until a batch uses it, then frozen', async () => {
    const changed = { ...draft(), note: 'with a warm bowl' };
    const next = await service.as.maker.put(`/recipes/${first.id}`, 1, changed).expect(200);
    await service.as.maker.put(`/recipes/${first.id}`, 1, changed).expect(412);
    await service.as.maker
      .post('/batches', { itemId: ganache, recipeVersionId: first.id })
      .expect(201);
    const { version } = next.body as Version;
    const answer = await service.as.maker.put(`/recipes/${first.id}`, version, changed);
    expect(answer.status).toBe(409);
    expect(answer.body).toMatchObject({ type: '/problems/recipe-version-frozen' });
  });

  it('may be a component of another, but never of itself', async () => {
    const shell = [
      line(items['dark-chocolate-60-69'], '68.64', 'shell'),
      line(ganache, '113.28', 'filling'),
      line(items['dark-chocolate-60-69'], '24.96', 'cap'),
    ];
    await write(piece, { lines: shell, yieldPieces: 24 }).expect(201);
    await write(box, { lines: [line(piece, '12', 'slot')], yieldPieces: 1 }).expect(201);
    const answer = await write(ganache, { lines: [...draft().lines, line(box, '1', 'base')] });
    expect(answer.status).toBe(409);
    expect(answer.body).toMatchObject({ type: '/problems/recipe-contains-itself' });
  });

  it('shows the chocolate share of a piece, and its allergens from below', async () => {
    const list = await service.as.auditor.get(`/items/${piece}/recipes`).expect(200);
    const [version] = list.body as Version[];
    const answer = await service.as.auditor.get(`/recipes/${version?.id ?? ''}/analysis`);
    expect(answer.body).toMatchObject({
      chocolateShare: { chocolatePercent: '45.24', enough: true },
      waterActivity: { status: 'none' },
    });
  });

  it('is written by makers only', async () => {
    const answer = await service.as.seller.post(`/items/${ganache}/recipes`, draft());
    expect(answer.status).toBe(403);
  });
});

describe('scaling', () => {
  const versionOf = async (itemId: string): Promise<string> => {
    const list = await service.as.auditor.get(`/items/${itemId}/recipes`).expect(200);
    return (list.body as Version[])[0]?.id ?? '';
  };

  it('goes from boxes to pieces to fillings to what to take from the store', async () => {
    const answer = await service.as.maker
      .post(`/recipes/${await versionOf(box)}/scale`, { kind: 'boxes', quantity: '10' })
      .expect(200);
    const body = answer.body as {
      stages: { itemName: string; piecesToMake: number | null }[];
      fromStore: { itemName: string; quantity: string }[];
    };
    expect(body.stages.map((stage) => stage.itemName)).toEqual([
      'Trial box',
      'Trial dome',
      'Trial ganache',
    ]);
    expect(body.stages[1]?.piecesToMake).toBe(120);
    expect(body.fromStore.some((row) => row.itemName === 'Trial cream-35')).toBe(true);
    expect(body.fromStore.some((row) => row.itemName === 'Trial ganache')).toBe(false);
  });

  it('refuses trays of a recipe that names no mould', async () => {
    const answer = await service.as.maker.post(`/recipes/${await versionOf(piece)}/scale`, {
      kind: 'trays',
      quantity: '2',
    });
    expect(answer.status).toBe(422);
    expect(answer.body).toMatchObject({ type: '/problems/scaling-target-unfit' });
  });
});

describe('generic compositions', () => {
  it('are at least 35, with their sources and a caution', async () => {
    const answer = await service.as.auditor.get('/reference-ingredients').expect(200);
    const body = answer.body as { items: { source: string }[]; caution: string };
    expect(body.items.length).toBeGreaterThanOrEqual(35);
    expect(body.caution).toContain('always wins');
  });

  it('are for ingredients only', async () => {
    const item = (await service.as.maker.get(`/items/${ganache}`)).body as { version: number };
    const answer = await service.as.maker.put(
      `/items/${ganache}/generic-composition`,
      item.version,
      {
        key: 'honey',
      },
    );
    expect(answer.status).toBe(422);
  });
});
