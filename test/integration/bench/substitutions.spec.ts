import { ask } from '../../support/database/ask';
import { startTestService, type TestService } from '../../support/service/test-service';
import { accepted } from '../../support/workshop/accepted';
import { type BatchBody, BenchHands } from '../../support/workshop/bench';
import { addItem, addSpecification, addSupplier, receive } from '../../support/workshop/fixtures';
import { genericItems, line } from '../recipes/recipe-kitchen';

const KEYS = ['cream-35', 'cream-37', 'dark-chocolate-60-69', 'dark-chocolate-70-85'] as const;

let service: TestService;
let items: Record<(typeof KEYS)[number], string>;
let batchId: string;
let substitute: string;

beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-25T09:00:00Z'));
  const supplierId = (await addSupplier(service)).id;
  items = await genericItems(service, KEYS);
  const absent = { milk: 'absent', soy: 'absent', hazelnut: 'absent' };
  await addSpecification(service, items['cream-35'], supplierId, { ...absent, milk: 'contains' });
  await addSpecification(service, items['dark-chocolate-60-69'], supplierId, absent);
  await addSpecification(service, items['dark-chocolate-70-85'], supplierId, {
    ...absent,
    hazelnut: 'may_contain',
    soy: 'contains',
  });
  const dark = (await service.as.maker.get(`/items/${items['dark-chocolate-60-69']}`)).body as {
    version: number;
  };
  await service.as.owner
    .patch(`/items/${items['dark-chocolate-60-69']}`, dark.version, { replacementPrice: '12.00' })
    .expect(200);
  const ganache = (await addItem(service, { name: 'Ganache', kind: 'filling' })).id;
  await service.as.maker
    .post(`/items/${ganache}/recipes`, {
      lines: [line(items['cream-35'], '100'), line(items['dark-chocolate-60-69'], '150')],
    })
    .expect(201);
  const batch = await service.as.maker
    .post('/batches', { itemId: ganache, plannedQuantity: '2500' })
    .expect(201);
  batchId = (batch.body as { id: string }).id;
  const lot = await receive(service, supplierId, {
    itemId: items['dark-chocolate-70-85'],
    quantity: '5000',
    price: '80.00',
    bestBefore: '2027-11-01',
  });
  substitute = lot.lotCode;
});
afterAll(() => service.close());

interface Compared {
  readonly allergens: readonly {
    allergen: string;
    before: string;
    after: string;
    isWorse: boolean;
  }[];
  readonly figures: readonly { figure: string; before: string | null; after: string | null }[];
  readonly notUsable: string | null;
}

const compare = (itemId: string, lotCode: string) =>
  service.as.maker.post(`/batches/${batchId}/substitutions`, { itemId, lotCode });

describe('a substitution', () => {
  it('is compared by allergen, composition and cost before it is drawn', async () => {
    const answer = await compare(items['dark-chocolate-60-69'], substitute).expect(200);
    expect(answer.body).toMatchObject({
      originalName: 'Trial dark-chocolate-60-69',
      substituteName: 'Trial dark-chocolate-70-85',
      plannedQuantity: '1500.000',
      originalCost: '18.0000',
      substituteCost: '24.0000',
      notUsable: null,
    });
    const { allergens, figures } = answer.body as Compared;
    expect(allergens).toContainEqual({
      allergen: 'soy',
      before: 'absent',
      after: 'contains',
      isWorse: true,
    });
    expect(allergens.find((row) => row.allergen === 'hazelnut')?.after).toBe('may_contain');
    const fat = figures.find((row) => row.figure === 'totalFat');
    expect(Number(fat?.after)).toBeGreaterThan(Number(fat?.before));
  });

  const draw = (more: object = {}) =>
    service.as.maker.post(`/batches/${batchId}/draws`, {
      lotCode: substitute,
      quantity: '500',
      role: 'base',
      reason: 'no mild chocolate left',
      ...more,
    });
  const drawn = async (): Promise<number> =>
    ((await service.as.auditor.get(`/batches/${batchId}`)).body as { draws: unknown[] }).draws
      .length;
  const soy = { allergen: 'soy', after: 'contains' };
  const hazelnut = { allergen: 'hazelnut', after: 'may_contain' };

  it('is not drawn before somebody accepts what it changes; the refusal says what', async () => {
    const instead = { insteadOfItemId: items['dark-chocolate-60-69'] };
    for (const acceptance of [
      undefined,
      { ...instead, allergens: [] },
      { ...instead, allergens: [soy] },
      { ...instead, allergens: [soy, { ...hazelnut, after: 'contains' }] },
    ]) {
      const answer = await draw(acceptance === undefined ? {} : { acceptance });
      expect(answer.body).toMatchObject({
        status: 409,
        type: '/problems/substitute-not-accepted',
        facts: { lotCode: substitute },
      });
      const { facts, detail } = answer.body as {
        facts: { notAccepted: object[]; allergens: object[] };
        detail: string;
      };
      expect(facts.notAccepted).toContainEqual(hazelnut);
      expect(facts.allergens).toContainEqual({ ...soy, before: 'absent', isWorse: true });
      expect(detail).toContain('hazelnut');
    }
    expect(await drawn()).toBe(0);
  });

  it('is refused without a reason, and as an addition in the place of a component', async () => {
    const acceptance = { allergens: [soy, hazelnut] };
    const silent = { lotCode: substitute, quantity: '500', role: 'base', acceptance };
    const answer = await service.as.maker.post(`/batches/${batchId}/draws`, silent);
    expect(answer.body).toMatchObject({ status: 422, type: '/problems/not-valid' });
    const wrong = { ...acceptance, insteadOfItemId: items['cream-37'] };
    expect((await draw({ acceptance: wrong })).body).toMatchObject({
      type: '/problems/not-in-recipe',
    });
    expect(await drawn()).toBe(0);
  });

  it('is drawn once all is accepted, and the journal keeps who accepted what', async () => {
    const insteadOfItemId = items['dark-chocolate-60-69'];
    const { allergens } = (await compare(insteadOfItemId, substitute)).body as Compared;
    const worse = allergens.filter((row) => row.isWorse);
    const acceptance = {
      insteadOfItemId,
      allergens: worse.map(({ allergen, after }) => ({ allergen, after })),
    };
    await draw({ acceptance }).expect(201);
    const { userName: me } = (await service.as.maker.get('/session')).body as { userName: string };
    expect(await drawn()).toBe(1);
    const rows = await ask<{ user_name: string; detail: Record<string, unknown> }>(
      service.databaseUrl,
      `SELECT user_name, detail FROM journal_entry WHERE action = 'batch.substitute-accepted'`,
    );
    expect(rows).toMatchObject([
      {
        detail: {
          lot: substitute,
          insteadOf: 'Trial dark-chocolate-60-69',
          quantity: '500',
          reason: 'no mild chocolate left',
          substituteCost: '24.0000',
        },
      },
    ]);
    expect(rows[0]?.user_name).toBe(me);
    expect(rows[0]?.detail['allergens']).toEqual(allergens);
  });

  it('is compared by what really went into a lot that was made here', async () => {
    const bench = new BenchHands(service);
    const bowl = (await addItem(service, { name: 'Plain filling', kind: 'filling' })).id;
    const recipe = (itemId: string) => ({ lines: [line(itemId, '100')] });
    await service.as.maker.post(`/items/${bowl}/recipes`, recipe(items['cream-35'])).expect(201);
    const batch = await bench.open(bowl);
    const odd = { lotCode: substitute, quantity: '100', role: 'base', reason: 'a trial' };
    await bench.draw(batch, await accepted(service, batch.id, odd)).expect(201);
    const ended = await bench.finish(batch, { outputs: [{ quantity: '100' }] }).expect(200);
    const made = (ended.body as BatchBody).outputs[0]?.lotCode ?? '';
    const answer = await compare(items['cream-35'], made).expect(200);
    const { allergens } = answer.body as Compared;
    expect(allergens).toContainEqual({ ...soy, before: 'absent', isWorse: true });
  });

  it('in addition to the recipe is compared too', async () => {
    const answer = await service.as.maker
      .post(`/batches/${batchId}/substitutions`, { lotCode: substitute, quantity: '250' })
      .expect(200);
    expect(answer.body).toMatchObject({ originalName: null, plannedQuantity: '250.000' });
    const { allergens, figures } = answer.body as Compared;
    expect(allergens).toContainEqual({ ...soy, before: 'absent', isWorse: true });
    const water = figures.find((row) => row.figure === 'water');
    expect(Number(water?.after)).toBeLessThan(Number(water?.before));
  });

  it('says why a held lot can’t be used, and still compares it', async () => {
    await service.as.seller
      .post(`/lots/${substitute}/holds`, { reason: 'the carton is torn' })
      .expect(201);
    const answer = await compare(items['dark-chocolate-60-69'], substitute).expect(200);
    expect((answer.body as Compared).notUsable).toContain('the carton is torn');
  });

  it('is refused for what the recipe doesn’t hold, and for a lot that isn’t there', async () => {
    const other = await compare(items['cream-37'], substitute);
    expect(other.status).toBe(422);
    expect(other.body).toMatchObject({ type: '/problems/not-in-recipe' });
    await compare(items['cream-35'], 'NOPE').expect(404);
  });
});
