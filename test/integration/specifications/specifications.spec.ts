import { INGREDIENTS } from '../../../prisma/demo/ingredients';
import { specify } from '../../../prisma/demo/specify';
import { startTestService, type TestService } from '../../support/service/test-service';
import { addItem, addSupplier, receive } from '../../support/workshop/fixtures';

let service: TestService;
let supplierId: string;
let itemId: string;

beforeAll(async () => {
  service = await startTestService();
  supplierId = (await addSupplier(service)).id;
  itemId = (await addItem(service, { name: 'Milk couverture', kind: 'ingredient' })).id;
});
afterAll(() => service.close());

const [couverture] = INGREDIENTS.filter((row) => row.name.startsWith('Milk couverture'));
const sheet = (): object => {
  if (couverture === undefined) throw new Error('no milk couverture in the demo');
  return { supplierId, document: 'Sheet 7', ...specify(couverture.specification) };
};

interface Stated {
  readonly id: string;
  readonly version: number;
  readonly state: string;
}

const draft = async (): Promise<Stated> =>
  (await service.as.maker.post(`/items/${itemId}/specifications`, sheet()).expect(201))
    .body as Stated;

describe('a specification', () => {
  it('is numbered, changed as a draft, approved by the owner and then never changes', async () => {
    const made = await draft();
    const path = `/items/${itemId}/specifications/${made.id}`;
    const { supplierId: _, ...body } = sheet() as Record<string, unknown>;
    const changed = await service.as.maker.put(path, made.version, body).expect(200);
    await service.as.maker.put(path, made.version, body).expect(412);
    await service.as.maker.post(`${path}/approve`).expect(403);
    const approved = await service.as.owner.post(`${path}/approve`).expect(201);
    expect(approved.body).toMatchObject({ state: 'approved', approvedBy: 'The owner', number: 1 });
    const { version } = changed.body as Stated;
    const refused = await service.as.maker.put(path, version + 1, body);
    expect(refused.status).toBe(409);
    expect((await draft()) as unknown).toMatchObject({ number: 2, state: 'draft' });
  });

  it('is pinned by the next delivery of its supplier, until it is withdrawn', async () => {
    const line = { itemId, quantity: '1000', bestBefore: '2099-01-01' };
    const pinned = await receive(service, supplierId, line);
    expect(pinned.heldBecause).toBeNull();
    const list = await service.as.auditor.get(`/items/${itemId}/specifications`).expect(200);
    const approved = (list.body as Stated[]).find((row) => row.state === 'approved');
    await service.as.owner
      .post(`/items/${itemId}/specifications/${approved?.id ?? ''}/withdraw`, { reason: 'recipe' })
      .expect(201);
    const held = await receive(service, supplierId, line);
    expect(held.heldBecause).toContain('no approved specification');
  });

  it('writes as unknown what the supplier is silent about, and the delivery is held', async () => {
    const { allergens, ...rest } = sheet() as { allergens: Record<string, string> };
    const { sesame: _, ...stated } = allergens;
    const made = await service.as.maker
      .post(`/items/${itemId}/specifications`, { ...rest, allergens: stated })
      .expect(201);
    expect(made.body).toMatchObject({ allergens: { sesame: 'unknown', milk: 'contains' } });
    const { id } = made.body as Stated;
    await service.as.owner.post(`/items/${itemId}/specifications/${id}/approve`).expect(201);
    const held = await receive(service, supplierId, {
      itemId,
      quantity: '1000',
      bestBefore: '2099-01-01',
    });
    expect(held.heldBecause).toContain('sesame');
  });

  it('names by pointer what does not add up', async () => {
    const answer = await service.as.maker.post(`/items/${itemId}/specifications`, {
      ...sheet(),
      allergens: { milk: 'absent', hazelnut: 'perhaps' },
    });
    expect(answer.status).toBe(400);
    const pointers = (answer.body as { errors: { pointer: string }[] }).errors.map(
      (error) => error.pointer,
    );
    expect(pointers).toContain('/allergens/hazelnut');
  });

  it('is asked of ingredients only', async () => {
    const filling = await addItem(service, { name: 'Ganache', kind: 'filling' });
    await service.as.maker.post(`/items/${filling.id}/specifications`, sheet()).expect(422);
  });
});
