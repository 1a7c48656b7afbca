import { randomUUID } from 'node:crypto';
import { ALLERGENS } from '@api/domain/specification';
import { startTestService, type TestService } from '../../support/service/test-service';
import { addItem, addSupplier } from '../../support/workshop/fixtures';
import {
  addIngredient,
  HAZELNUTS,
  openLabelKitchen,
  type LabelKitchen,
} from '../../support/workshop/label-kitchen';

/** What can't be right gets a clear problem at its place, and never a label. */

let service: TestService;
let kitchen: LabelKitchen;
let lotCode: string;

interface Problem {
  readonly type: string;
  readonly status: number;
  readonly title: string;
  readonly detail: string;
  readonly errors?: readonly { readonly pointer: string; readonly message: string }[];
}

beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-25T09:00:00Z'));
  const workshop = await service.as.owner.get('/workshop').expect(200);
  const { version } = workshop.body as { version: number };
  const addressLines = ['1 Example Lane', '1000 Nowhere'];
  await service.as.owner.patch('/workshop', version, { addressLines }).expect(200);
  kitchen = await openLabelKitchen(service);
  const nuts = await addIngredient(service, kitchen.supplierId, 'Plain nuts', HAZELNUTS);
  lotCode = await kitchen.receive(nuts, '500', { bestBefore: '2027-06-01' });
  await setUp(nuts, { names: { en: 'Roasted hazelnuts' }, netGrams: '100' });
}, 60_000);
afterAll(() => service.close());

const setUp = async (itemId: string, change: object) => {
  const seen = await service.as.maker.get(`/items/${itemId}/label-settings`).expect(200);
  const { version, ...settings } = seen.body as { version: number; nutrition: object };
  Reflect.deleteProperty(settings, 'usual');
  const nutrition = { ...settings.nutrition, smallLocalMaker: true };
  return service.as.maker.put(`/items/${itemId}/label-settings`, version, {
    ...settings,
    nutrition,
    ...change,
  });
};

const specification = async (ingredient: object, more: object = {}): Promise<Problem> => {
  const item = await addItem(service, { name: `Thing ${randomUUID()}`, kind: 'ingredient' });
  const supplier = await addSupplier(service, `Supplier ${randomUUID()}`);
  const absent = Object.fromEntries(ALLERGENS.map((allergen) => [allergen, 'absent']));
  const answer = await service.as.maker.post(`/items/${item.id}/specifications`, {
    supplierId: supplier.id,
    ingredient,
    allergens: absent,
    ...more,
  });
  return answer.body as Problem;
};

const placesOf = (problem: Problem): string[] => {
  expect(problem).toMatchObject({ type: '/problems/fields-not-valid', status: 400 });
  expect(problem.detail.length).toBeGreaterThan(10);
  return (problem.errors ?? []).map(({ pointer, message }) => `${pointer}: ${message}`);
};

describe('an ingredient that can’t be', () => {
  const named = (name: string, more: object = {}) => ({ names: { en: name }, ...more });

  it('of percentages over 100', async () => {
    const parts = [named('a', { percent: '60' }), named('b', { percent: '40.1' })];
    expect(placesOf(await specification(named('mix', { parts })))).toEqual([
      '/ingredient/parts: percentages must not exceed 100; they sum to 100.1',
    ]);
  });

  it.each(['101', '-1', 'half', '1e3', 50])('of a percentage of %j', async (percent) => {
    const parts = [named('a', { percent })];
    const [place] = placesOf(await specification(named('mix', { parts })));
    expect(place).toMatch(/^\/ingredient\/parts\/0\/percent: must be/);
  });

  it('of itself, at any depth', async () => {
    const parts = [named('paste', { parts: [named('PRALINE')] })];
    expect(placesOf(await specification(named('praline', { parts })))).toEqual([
      '/ingredient/parts/0/parts/0/names: must not be an ingredient of itself',
    ]);
  });

  it('nested without end', async () => {
    const deep = [...'abcdefgh'].reduceRight<object>(
      (below, name) => named(name, { parts: [below] }),
      named('z'),
    );
    expect(placesOf(await specification(deep)).join()).toContain('must not nest deeper than 6');
  });

  it.each([
    ['a name of 500 characters', 'x'.repeat(500), 'at most 200 characters'],
    ['right-to-left text', 'שוקולד', 'written from left to right'],
    ['a mark that turns the text', 'su\u202egar', 'control or direction characters'],
    ['nothing but spaces', '   ', 'must not be empty'],
  ])('with %s', async (_, name, message) => {
    expect(placesOf(await specification(named(name))).join()).toContain(message);
  });

  it('of an allergen that nobody knows, or that its own table denies', async () => {
    const unknown = named('x', { origins: [{ allergen: 'moonstone' }] });
    expect(placesOf(await specification(unknown)).join()).toContain('/ingredient/origins/0/allergen'); // prettier-ignore
    const denied = named('x', { origins: [{ allergen: 'milk' }] });
    expect(placesOf(await specification(denied))).toEqual([
      '/allergens/milk: must be "contains": an ingredient comes from it',
    ]);
  });

  it('of a group that the Regulation doesn’t know', async () => {
    const grouped = named('x', { group: { kind: 'pebbles' } });
    expect(placesOf(await specification(grouped)).join()).toContain('/ingredient/group/kind');
  });
});

const print = async (more: object): Promise<Problem> => {
  const answer = await service.as.seller.post(`/lots/${lotCode}/label-previews`, {
    form: 'box_label',
    copies: 1,
    languages: ['en'],
    ...more,
  });
  return answer.body as Problem;
};

describe('a label that can’t be printed', () => {
  it('prints when nothing is wrong', async () => {
    const answer = await service.as.seller
      .post(`/lots/${lotCode}/label-previews`, { form: 'box_label', copies: 1, languages: ['en'] })
      .buffer(true);
    expect(answer.status).toBe(200);
  });

  it.each<[string, object]>([
    ['of no kind', { kind: 'scroll', widthMm: 60, marginMm: 2 }],
    ['without measures', { kind: 'roll' }],
    ['with measures in words', { kind: 'roll', widthMm: '60', marginMm: 2 }],
    ['narrower than a finger', { kind: 'roll', widthMm: 5, marginMm: 1 }],
    ['of a page that no printer has', { kind: 'sheet', page: 'A9', columns: 1, rows: 1, labelWidthMm: 60, labelHeightMm: 60, leftMm: 0, topMm: 0, pitchXMm: 60, pitchYMm: 60, marginMm: 2, startAt: 1 }],
    ['that starts behind its last label', { kind: 'sheet', page: 'A4', columns: 2, rows: 2, labelWidthMm: 90, labelHeightMm: 90, leftMm: 0, topMm: 0, pitchXMm: 90, pitchYMm: 90, marginMm: 2, startAt: 5 }],
  ])('on stock %s', async (_, stock) => {
    expect(await print({ stock })).toMatchObject({ type: '/problems/stock-not-valid', status: 422 });
    expect(await print({ stock, form: 'legend_card' })).toMatchObject({ type: '/problems/stock-not-valid' });
  }); // prettier-ignore

  it.each<[string, object, string]>([
    ['in a language that isn’t there', { languages: ['xx'] }, '/languages'],
    ['no times', { copies: 0 }, '/copies'],
    ['too many times', { copies: 2001 }, '/copies'],
    ['for a market that isn’t there', { market: 'MOON' }, '/market'],
    ['in a form that isn’t there', { form: 'poster' }, '/form'],
    ['at a price in words', { price: 'cheap' }, '/price'],
    ['with a decision without a reason', { accepted: [{ code: 'differs-allergen' }] }, '/accepted/0/reason'],
  ])('%s', async (_, more, pointer) => {
    expect(placesOf(await print(more)).join()).toContain(pointer);
  }); // prettier-ignore

  it('in a language in which its ingredients have no name', async () => {
    const problem = await print({ languages: ['de'] });
    expect(problem).toMatchObject({ type: '/problems/label-kept-back', status: 409 });
    expect(problem.detail).toContain('no name in de');
  });

  it('of a name that no font of ours has', async () => {
    const nuts = await addIngredient(service, kitchen.supplierId, 'Far nuts', HAZELNUTS);
    const code = await kitchen.receive(nuts, '10', { bestBefore: '2027-06-01' });
    await setUp(nuts, { names: { en: '榛子' }, netGrams: '10' });
    const answer = await service.as.seller.post(`/lots/${code}/label-previews`, { form: 'box_label', copies: 1, languages: ['en'] }); // prettier-ignore
    expect(answer.status).toBe(422);
    expect(answer.body).toMatchObject({ type: '/problems/text-not-printable' });
  });

  it('of nothing: zero grams in the pack', async () => {
    const nuts = await addIngredient(service, kitchen.supplierId, 'No nuts', HAZELNUTS);
    const code = await kitchen.receive(nuts, '10', { bestBefore: '2027-06-01' });
    const zero = await setUp(nuts, { names: { en: 'Nuts' }, netGrams: '0.000' });
    expect(placesOf(zero.body as Problem)).toEqual(['/netGrams: netGrams must be more than 0']);
    await setUp(nuts, { names: { en: 'Nuts' } });
    const answer = await service.as.seller.post(`/lots/${code}/label-previews`, { form: 'box_label', copies: 1, languages: ['en'] }); // prettier-ignore
    expect(answer.status).toBe(409);
    expect((answer.body as Problem).detail).toContain('no net quantity');
  });
});

describe('label settings that can’t be', () => {
  it.each<[string, object, string]>([
    ['a sales name of 500 characters', { names: { en: 'x'.repeat(500) } }, '/names/en'],
    ['a right-to-left sales name', { names: { en: 'شوكولاتة' } }, '/names/en'],
    ['an unknown language', { names: { tlh: 'x' } }, '/names/tlh'],
    ['no surface', { largestSurfaceCm2: '-1' }, '/largestSurfaceCm2'],
    ['a surface in words', { largestSurfaceCm2: 'large' }, '/largestSurfaceCm2'],
    ['no pieces', { pieceCount: 0 }, '/pieceCount'],
    ['no sitting', { sittingGrams: '0' }, '/sittingGrams'],
    ['an unknown group', { listGroups: ['pebbles'] }, '/listGroups'],
    ['a pair of one', { interchangeable: [{ itemId: '00000000-0000-4000-8000-000000000000' }] }, '/interchangeable/0/orItemId'],
  ])('%s', async (_, change, pointer) => {
    const nuts = await addIngredient(service, kitchen.supplierId, 'Nuts', HAZELNUTS);
    const answer = await setUp(nuts, change);
    expect(placesOf(answer.body as Problem).join()).toContain(pointer);
  }); // prettier-ignore
});

describe('weighings that can’t be', () => {
  it.each<[string, object, string]>([
    ['a pack of no weight', { nominalGrams: '0' }, '/nominalGrams'],
    ['a weight below nothing', { netWeightsGrams: ['-1'] }, '/netWeightsGrams/0'],
    ['a weight in words', { netWeightsGrams: ['44', 'heavy'] }, '/netWeightsGrams/1'],
    ['a batch of no packs', { batchSize: 0 }, '/batchSize'],
  ])('%s', async (_, change, pointer) => {
    const answer = await service.as.seller.post(`/lots/${lotCode}/quantity-checks`, {
      nominalGrams: '44', batchSize: 4, destructive: false, netWeightsGrams: ['44'], ...change,
    });
    expect(placesOf(answer.body as Problem).join()).toContain(pointer);
  }); // prettier-ignore
});
