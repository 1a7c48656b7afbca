import { ask } from '../../support/database/ask';
import { startTestService, type TestService } from '../../support/service/test-service';
import { type BatchBody, BenchHands } from '../../support/workshop/bench';
import { addItem, addSpecification } from '../../support/workshop/fixtures';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';

let service: TestService;
let kitchen: Kitchen;
let bench: BenchHands;
let couverture: string;

beforeAll(async () => {
  service = await startTestService();
  kitchen = await openKitchen(service);
  bench = new BenchHands(service);
  couverture = await kitchen.receive(kitchen.couverture, '90000', { price: '900' });
});
afterAll(() => service.close());

interface Tank {
  readonly id: string;
  readonly version: number;
  readonly currentLot: { readonly lotCode: string } | null;
}

const addTank = async (name: string, itemId = kitchen.couverture): Promise<Tank> =>
  (await service.as.maker.post('/tanks', { name, itemId, capacityGrams: '10000' }).expect(201))
    .body as Tank;
const charge = (tank: Tank, ...lots: object[]) =>
  service.as.maker.post(`/tanks/${tank.id}/charges`, { lots });
const empty = (tank: Tank, body: object) =>
  service.as.maker.post(`/tanks/${tank.id}/emptyings`, body);
const shown = async (tank: Tank): Promise<Tank> =>
  (await service.as.auditor.get(`/tanks/${tank.id}`).expect(200)).body as Tank;

describe('a tank', () => {
  it('refuses another chocolate, unless it is rework', async () => {
    const tank = await addTank('First');
    const tea = await kitchen.receive(kitchen.tea, '500');
    const other = await charge(tank, { lotCode: tea, quantity: '100' });
    expect(other.status).toBe(409);
    expect(other.body).toMatchObject({ type: '/problems/tank-holds-another' });
    await charge(tank, { lotCode: tea, quantity: '100', rework: true }).expect(201);
  });

  it('takes another chocolate in a correction only when what it changes was accepted', async () => {
    const chocolate = async (name: string, hazelnut: string) => {
      const item = await addItem(service, { name, kind: 'ingredient' });
      await addSpecification(service, item.id, kitchen.supplierId, { hazelnut });
      return { ...item, lotCode: await kitchen.receive(item.id, '5000') };
    };
    const plain = await chocolate('Plain couverture', 'absent');
    const nutty = await chocolate('Gianduja couverture', 'contains');
    const poured = nutty.lotCode;
    const tank = await addTank('Corrected', plain.id);
    const taken = await charge(tank, { lotCode: plain.lotCode, quantity: '1000' }).expect(201);
    const { batchId, lotCode: inside } = taken.body as { batchId: string; lotCode: string };
    const { draws } = (await service.as.auditor.get(`/batches/${batchId}`).expect(200))
      .body as BatchBody;
    const correct = (more: object = {}) =>
      service.as.maker.post(`/batches/${batchId}/corrections`, {
        reason: 'the gianduja stood beside it',
        reversedDrawIds: [draws[0]?.id],
        draws: [
          { lotCode: plain.lotCode, quantity: '400' },
          { lotCode: poured, quantity: '600', ...more },
        ],
      });

    const refused = await correct();
    expect(refused.body).toMatchObject({
      status: 409,
      type: '/problems/substitute-not-accepted',
      facts: { lotCode: poured, notAccepted: [{ allergen: 'hazelnut', after: 'contains' }] },
    });
    const { facts, detail } = refused.body as { facts: { allergens: object[] }; detail: string };
    expect(facts.allergens).toContainEqual({
      allergen: 'hazelnut',
      before: 'absent',
      after: 'contains',
      isWorse: true,
    });
    expect(detail).toContain('tank Corrected');
    expect(await bench.lot(inside)).toMatchObject({ onHandMassGrams: '1000.000' });
    expect((await correct({ acceptance: { allergens: [] } })).status).toBe(409);

    // The comparison that is shown beforehand says the same as the refusal.
    const shownFirst = await service.as.maker
      .post(`/batches/${batchId}/substitutions`, { lotCode: poured, quantity: '600' })
      .expect(200);
    expect((shownFirst.body as typeof facts).allergens).toEqual(facts.allergens);

    // It is judged by what the tank was charged for, whatever it is to hold by now.
    await empty(tank, { outcome: 'kept', cleaned: true }).expect(201);
    const { version } = await shown(tank);
    await service.as.maker.patch(`/tanks/${tank.id}`, version, { itemId: nutty.id }).expect(200);
    expect((await correct()).status).toBe(409);

    await correct({
      acceptance: { allergens: [{ allergen: 'hazelnut', after: 'contains' }] },
    }).expect(201);
    const rows = await ask<{ detail: Record<string, unknown> }>(
      service.databaseUrl,
      `SELECT detail FROM journal_entry WHERE action = 'batch.substitute-accepted'`,
    );
    expect(rows).toMatchObject([{ detail: { lot: poured, item: nutty.name, quantity: '600' } }]);
  });

  it('is corrected to another lot of its own chocolate without ado', async () => {
    const tank = await addTank('Same');
    const taken = await charge(tank, { lotCode: couverture, quantity: '1000' }).expect(201);
    const { batchId } = taken.body as { batchId: string };
    const other = await kitchen.receive(kitchen.couverture, '2000');
    const { draws } = (await service.as.auditor.get(`/batches/${batchId}`).expect(200))
      .body as BatchBody;
    const corrected = await service.as.maker
      .post(`/batches/${batchId}/corrections`, {
        reason: 'the other sack was open',
        reversedDrawIds: [draws[0]?.id],
        draws: [{ lotCode: other, quantity: '1000' }],
      })
      .expect(201);
    expect((corrected.body as BatchBody).draws.map(({ lotCode }) => lotCode)).toContain(other);
  });

  it('is charged from one lot on two lines to the gram, and not from its own lot', async () => {
    const tank = await addTank('Second');
    const line = { lotCode: couverture, quantity: '333.333' };
    await charge(tank, line, line).expect(201);
    const { currentLot } = await shown(tank);
    expect(currentLot).toMatchObject({ onHandGrams: '666.666' });
    const own = await charge(tank, { lotCode: currentLot?.lotCode, quantity: '1' });
    expect(own.status).toBe(422);
  });

  it('keeps its heel as a lot, or wastes it, and is empty after', async () => {
    const tank = await addTank('Third');
    await charge(tank, { lotCode: couverture, quantity: '1000' }).expect(201);
    const kept = (await shown(tank)).currentLot?.lotCode ?? '';
    const first = await empty(tank, { outcome: 'kept', cleaned: false }).expect(201);
    expect(first.body).toMatchObject({ lotCode: kept, heelGrams: '1000.000', outcome: 'kept' });
    expect(await bench.lot(kept)).toMatchObject({ onHandQuantity: '1000.000' });
    await charge(tank, { lotCode: kept, quantity: '400' }).expect(201);
    const wasted = (await shown(tank)).currentLot?.lotCode ?? '';
    await empty(tank, { outcome: 'wasted', cleaned: true }).expect(201);
    expect(await bench.lot(wasted)).toMatchObject({ onHandQuantity: '0.000' });
    const nothing = await empty(tank, { outcome: 'wasted', cleaned: true }).expect(201);
    expect(nothing.body).toMatchObject({ outcome: 'nothing_left', heelGrams: '0.000' });
    const dry = await bench.open(kitchen.piece);
    const refused = await bench.draw(dry, { tankId: tank.id, quantity: '1', role: 'shell' });
    expect(refused.body).toMatchObject({ type: '/problems/tank-empty', status: 409 });
  });

  it('can be emptied while its lot is on hold, but not topped up', async () => {
    const tank = await addTank('Fourth');
    await charge(tank, { lotCode: couverture, quantity: '1000' }).expect(201);
    const code = (await shown(tank)).currentLot?.lotCode ?? '';
    await service.as.maker.post(`/lots/${code}/holds`, { reason: 'a splinter' }).expect(201);
    const top = await charge(tank, { lotCode: couverture, quantity: '1000' });
    expect(top.body).toMatchObject({ type: '/problems/lot-held', facts: { lotCode: code } });
    await empty(tank, { outcome: 'wasted', cleaned: true }).expect(201);
  });

  it('keeps its chocolate as long as something is in it', async () => {
    const tank = await addTank('Fifth');
    await charge(tank, { lotCode: couverture, quantity: '1000' }).expect(201);
    const { version } = await shown(tank);
    const answer = await service.as.maker.patch(`/tanks/${tank.id}`, version, {
      itemId: kitchen.cream,
    });
    expect(answer.body).toMatchObject({ type: '/problems/still-in-use', status: 409 });
  });
});

describe('a mould', () => {
  const addTrays = async (count: number): Promise<string[]> => {
    const body = { designId: kitchen.designId, count };
    const answer = await service.as.maker.post('/moulds', body).expect(201);
    return (answer.body as { items: { tag: string }[] }).items.map(({ tag }) => tag);
  };
  const use = (batch: { id: string }, mouldTag: string | undefined, more: object = {}) =>
    service.as.maker.post(`/batches/${batch.id}/mould-uses`, {
      mouldTag,
      cavitiesFilled: 24,
      ...more,
    });

  it('is not in two open batches at once', async () => {
    const [tag] = await addTrays(1);
    const [one, two] = [await bench.open(kitchen.piece), await bench.open(kitchen.piece)];
    await use(one, tag).expect(201);
    const refused = await use(two, tag);
    expect(refused.body).toMatchObject({ type: '/problems/mould-in-use', status: 409 });
    await service.as.maker.post(`/batches/${one.id}/abandon`, { reason: 'power cut' }).expect(200);
    await use(two, tag).expect(201);
  });

  it('has the cavities that its design has', async () => {
    const [tag] = await addTrays(1);
    const batch = await bench.open(kitchen.piece);
    for (const wrong of [
      { cavitiesFilled: 25 },
      { rejectCavities: [25] },
      { rejectCavities: [3, 3] },
      { cavitiesFilled: 1, rejectCavities: [1, 2] },
    ]) {
      const refused = await use(batch, tag, wrong);
      expect(refused.body).toMatchObject({ type: '/problems/mould-unfit', status: 422 });
    }
  });

  it('is cast in only when the last inspection found it sound; retired is for good', async () => {
    const [tag] = await addTrays(1);
    const inspect = (result: string) =>
      service.as.maker.post(`/moulds/${tag ?? ''}/inspections`, { result, note: 'cavity 7' });
    const batch = await bench.open(kitchen.piece);
    await use(batch, tag).expect(201);
    const chipped = await inspect('chipped').expect(201);
    expect(chipped.body).toMatchObject({
      state: 'chipped',
      usedSinceSound: true,
      inspections: [{ result: 'chipped' }, { result: 'sound' }],
    });
    expect((await use(batch, tag)).body).toMatchObject({ type: '/problems/mould-not-sound' });
    await inspect('sound').expect(201);
    await use(batch, tag).expect(201);
    await inspect('retired').expect(201);
    expect((await inspect('sound')).status).toBe(409);
  });

  it('is of the shape that the recipe is cast in, and only in a casting', async () => {
    const design = { name: 'Bar', shape: 'block', rows: 1, columns: 2 };
    const bar = await service.as.maker.post('/mould-designs', design).expect(201);
    const body = { designId: (bar.body as { id: string }).id, count: 1 };
    const trays = await service.as.maker.post('/moulds', body).expect(201);
    const [tray] = (trays.body as { items: { tag: string }[] }).items;
    const cast = await bench.open(kitchen.piece);
    const unfit = await use(cast, tray?.tag, { cavitiesFilled: 2 });
    expect(unfit.body).toMatchObject({ type: '/problems/mould-unfit' });
    const cook = await bench.open(kitchen.ganache);
    const nowhere = await use(cook, tray?.tag, { cavitiesFilled: 2 });
    expect(nowhere.body).toMatchObject({ type: '/problems/batch-kind-unfit' });
  });
});
