import { startTestService, type TestService } from '../../support/service/test-service';
import { addItem, addSpecification, addSupplier, receive } from '../../support/workshop/fixtures';
import { BenchHands } from '../../support/workshop/bench';
import { type Analysis, genericItems, line, type Version } from './recipe-kitchen';

const KEYS = ['cream-35', 'dark-chocolate-60-69'] as const;

let service: TestService;
let hands: BenchHands;
let version: Version;
let lotCode: string;
let batchId: string;

beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-25T09:00:00Z'));
  hands = new BenchHands(service);
  const supplierId = (await addSupplier(service)).id;
  const items = await genericItems(service, KEYS);
  for (const key of KEYS) await addSpecification(service, items[key], supplierId);
  const ganache = (await addItem(service, { name: 'Plain ganache', kind: 'filling' })).id;
  const recipe = {
    lines: [line(items['cream-35'], '100'), line(items['dark-chocolate-60-69'], '150')],
    shelfLifeDays: 5,
    shelfLifeBasis: 'chosen',
    lifeAfterThawDays: 2,
  };
  version = (await service.as.maker.post(`/items/${ganache}/recipes`, recipe).expect(201))
    .body as Version;
  const cream = await receive(service, supplierId, {
    itemId: items['cream-35'],
    quantity: '1000',
    useBy: '2026-12-20',
    tempC: '4',
  });
  const dark = await receive(service, supplierId, {
    itemId: items['dark-chocolate-60-69'],
    quantity: '1000',
    bestBefore: '2027-12-20',
  });
  const batch = await hands.make(
    ganache,
    [
      { lotCode: cream.lotCode, quantity: '100' },
      { lotCode: dark.lotCode, quantity: '150' },
    ],
    { outputs: [{ quantity: '250' }] },
  );
  batchId = batch.id;
  lotCode = batch.outputs[0]?.lotCode ?? '';
});
afterAll(() => service.close());

const analysis = async (): Promise<Analysis> =>
  (await service.as.auditor.get(`/recipes/${version.id}/analysis`).expect(200)).body as Analysis;
const readActivity = (value: string) =>
  service.as.maker
    .post(`/batches/${batchId}/readings`, {
      measure: 'water_activity',
      value,
      instrument: 'Meter 1',
    })
    .expect(201);

describe('measured water activity', () => {
  it('is a fraction: a value in per cent is refused with what to write', async () => {
    const path = `/batches/${batchId}/readings`;
    const body = { measure: 'water_activity', value: '90.5', instrument: 'Meter 1' };
    const answer = await service.as.maker.post(path, body);
    expect(answer.status).toBe(422);
    expect(answer.body).toMatchObject({
      type: '/problems/reading-not-possible',
      errors: [{ pointer: '/value' }],
    });
    expect((answer.body as { detail: string }).detail).toContain('read 0.905');
  });

  it('does not override while its meter has no calibration that passed', async () => {
    await readActivity('0.905');
    const found = await analysis();
    expect(found.waterActivity.status).toBe('estimated');
    expect(found.cautions.map((row) => row.code)).toContain('meter-not-calibrated');
  });

  it('judges a calibration against saturated salts', async () => {
    service.clock.setTo(new Date('2026-11-25T09:30:00Z'));
    const one = await service.as.maker.post('/meters/calibrations', {
      instrument: 'Meter 1',
      checks: [{ salt: 'NaCl', tempC: '25', reading: '0.7530' }],
    });
    expect(one.body).toMatchObject({ passed: false });
    const wrong = (tempC: string, reading: string) =>
      service.as.maker.post('/meters/calibrations', {
        instrument: 'Meter 1',
        checks: [
          { salt: 'KCl', tempC: '25', reading: '0.8430' },
          { salt: 'NaCl', tempC, reading },
        ],
      });
    const perCent = await wrong('25', '75.4');
    expect(perCent.status).toBe(422);
    expect(perCent.body).toMatchObject({ errors: [{ pointer: '/checks/1/reading' }] });
    expect((perCent.body as { detail: string }).detail).toContain('read 0.754');
    expect((await wrong('51', '0.7540')).status).toBe(422);
    const two = await service.as.maker
      .post('/meters/calibrations', {
        instrument: 'Meter 1',
        checks: [
          { salt: 'NaCl', tempC: '25', reading: '0.7570' },
          { salt: 'KCl', tempC: '25', reading: '0.8450' },
        ],
      })
      .expect(201);
    expect(two.body).toMatchObject({ passed: true, uncertainty: '0.0040' });
    const list = await service.as.auditor.get('/meters/calibrations').expect(200);
    expect((list.body as { items: unknown[] }).items).toHaveLength(2);
  });

  it('overrides the estimate of its own recipe version once the meter is calibrated', async () => {
    service.clock.setTo(new Date('2026-11-25T10:00:00Z'));
    await readActivity('0.915');
    const found = await analysis();
    expect(found.waterActivity).toMatchObject({
      status: 'measured',
      value: '0.9150',
      error: '0.0040',
      worst: '0.9190',
    });
    const list = await service.as.auditor.get(`/recipes/${version.id}/measurements`).expect(200);
    expect((list.body as { usable: boolean }[]).map((row) => row.usable)).toEqual([true, false]);
  });

  it('builds the workshop’s own table of estimates against measurements', async () => {
    const answer = await service.as.auditor.get('/recipes/water-activity-record').expect(200);
    expect(answer.body).toMatchObject({
      rows: [{ itemName: 'Plain ganache', measured: '0.9150' }],
      record: { pairs: 1 },
    });
  });
});

describe('the date of a lot', () => {
  const dates = async () =>
    (await service.as.seller.get(`/lots/${lotCode}/dates`).expect(200)).body as {
      day: string;
      kind: string;
      reasons: { rules: boolean; kind: string; text: string }[];
    };

  it('opens into the lines that set it', async () => {
    const found = await dates();
    expect(found).toMatchObject({ day: '2026-11-30', kind: 'best_before' });
    expect(found.reasons.filter((row) => row.rules).map((row) => row.kind)).toEqual([
      'recipe_life',
    ]);
    expect(found.reasons).toHaveLength(3);
  });

  it('explains a received lot by its supplier’s date', async () => {
    const batch = (await service.as.auditor.get(`/batches/${batchId}`).expect(200)).body as {
      draws: { lotCode: string }[];
    };
    const answer = await service.as.auditor.get(`/lots/${batch.draws[0]?.lotCode ?? ''}/dates`);
    expect(answer.body).toMatchObject({ kind: 'use_by', day: '2026-12-20' });
    expect(JSON.stringify(answer.body)).toContain('supplier’s own date');
  });

  it('stops in the freezer once, by the recipe’s rule', async () => {
    const freeze = () => service.as.maker.post(`/lots/${lotCode}/freezing`, {});
    const frozen = await freeze().expect(201);
    expect(frozen.body).toMatchObject({ frozenOn: '2026-11-25', day: '2026-11-30' });
    service.clock.setTo(new Date('2027-01-10T09:00:00Z'));
    const thawed = await service.as.maker.post(`/lots/${lotCode}/thawing`, {}).expect(201);
    expect(thawed.body).toMatchObject({ day: '2027-01-12', thawedOn: '2027-01-10' });
    expect((await dates()).reasons.filter((row) => row.rules)).toMatchObject([{ kind: 'thawed' }]);
    const again = await freeze();
    expect(again.status).toBe(409);
    expect(again.body).toMatchObject({ type: '/problems/frozen-once-already' });
  });

  it('is not frozen by a seller, nor in the future', async () => {
    expect((await service.as.seller.post(`/lots/${lotCode}/freezing`, {})).status).toBe(403);
    const future = await service.as.maker.post(`/lots/${lotCode}/freezing`, { on: '2099-01-01' });
    expect(future.status).toBe(422);
  });

  it('of a lot that isn’t there is not found', async () => {
    await service.as.maker.get('/lots/NOPE/dates').expect(404);
  });
});
