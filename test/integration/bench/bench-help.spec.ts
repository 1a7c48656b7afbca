import { startTestService, type TestService } from '../../support/service/test-service';
import { genericItems } from '../recipes/recipe-kitchen';

const KEYS = ['dark-chocolate-60-69'] as const;

let service: TestService;
let items: Record<(typeof KEYS)[number], string>;

beforeAll(async () => {
  service = await startTestService();
  items = await genericItems(service, KEYS);
});
afterAll(() => service.close());

describe('tempering', () => {
  const path = () => `/items/${items['dark-chocolate-60-69']}/tempering`;
  const version = async (): Promise<number> =>
    (
      (await service.as.maker.get(`/items/${items['dark-chocolate-60-69']}`)).body as {
        version: number;
      }
    ).version;

  it('has no windows until the product is named', async () => {
    await service.as.maker.get(path()).expect(404);
  });

  it('takes the table, judges a reading and says what next', async () => {
    const set = await service.as.maker
      .put(path(), await version(), { product: 'dark' })
      .expect(200);
    expect(set.body).toMatchObject({
      isMakers: false,
      checks: [{ step: 'melt' }, { step: 'cool' }, { step: 'work', low: '31.00', high: '32.00' }],
    });
    const verdict = await service.as.seller
      .post(`${path()}/verdict`, { step: 'work', tempC: '33.5' })
      .expect(200);
    expect(verdict.body).toMatchObject({ verdict: 'high' });
    expect((verdict.body as { advice: string }).advice).toContain('strip');
  });

  it('lets the maker’s curve beat the table, and refuses half a curve', async () => {
    const own = {
      product: 'dark',
      melt: { lowC: '45', highC: '50' },
      work: { lowC: '33', highC: '34' },
      source: 'Sheet of the maker',
    };
    await service.as.maker.put(path(), await version(), own).expect(200);
    const verdict = await service.as.maker.post(`${path()}/verdict`, {
      step: 'work',
      tempC: '33.5',
    });
    expect(verdict.body).toMatchObject({ verdict: 'in', source: 'Sheet of the maker' });
    const half = { product: 'dark', melt: own.melt };
    expect((await service.as.maker.put(path(), await version(), half)).status).toBe(422);
  });

  it('warns of a room whose dew point is above the product', async () => {
    const room = await service.as.maker
      .post('/tempering/room', { productC: '10', roomC: '22', humidityPercent: '60' })
      .expect(200);
    expect(room.body).toMatchObject({ condenses: true });
    const odd = { productC: '10', roomC: '22', humidityPercent: '0' };
    expect((await service.as.maker.post('/tempering/room', odd)).status).toBe(422);
  });
});

describe('moulding', () => {
  it('gives parts and chocolate share from a drawing', async () => {
    const answer = await service.as.maker
      .post('/moulding/cavity', {
        shape: 'hemisphere',
        diameterMm: '30',
        wallMm: '1.8',
        capGapMm: '1.5',
      })
      .expect(200);
    expect(answer.body).toMatchObject({
      shellGrams: '2.859',
      fillingGrams: '4.719',
      capGrams: '1.038',
      chocolateShare: { chocolatePercent: '45.23', enough: true },
    });
  });

  it('gives parts from weighings, and refuses what is no weight', async () => {
    const body = {
      shellsGrams: ['2.8', '3.0'],
      filledGrams: ['7.6', '7.6'],
      cappedGrams: ['8.6', '8.8'],
    };
    const answer = await service.as.maker.post('/moulding/weighings', body).expect(200);
    expect(answer.body).toMatchObject({ fillingGrams: '4.700', capGrams: '1.100' });
    const wrong = await service.as.maker.post('/moulding/weighings', {
      ...body,
      shellsGrams: ['two', '3'],
    });
    expect(wrong.status).toBe(422);
    const impossible = { shape: 'block', wallMm: '2', capGapMm: '1' };
    expect((await service.as.maker.post('/moulding/cavity', impossible)).status).toBe(422);
  });
});

describe('an infusion', () => {
  const weights = {
    liquidGrams: '1000',
    boiledGrams: '972',
    strainedGrams: '884',
    solidsGrams: '40',
  };

  it('is weighed back into steam, what is held back and the top-up', async () => {
    const answer = await service.as.maker.post('/infusions/weights', weights).expect(200);
    expect(answer.body).toMatchObject({
      steamGrams: '28.000',
      heldBackGrams: '88.000',
      retentionRatio: '2.200',
      topUpGrams: '116.000',
      discardedLiquidGrams: '90.535',
    });
    const plan = await service.as.maker
      .post('/infusions/plan', {
        liquidGrams: '1000',
        steamGrams: '28',
        solidsGrams: '40',
        retentionRatio: '2.2',
      })
      .expect(200);
    expect(plan.body).toEqual(answer.body);
  });

  it('refuses liquid that gets more, and nothing strained out', async () => {
    const more = { ...weights, boiledGrams: '1010' };
    expect((await service.as.maker.post('/infusions/weights', more)).status).toBe(422);
    const nothing = { ...weights, solidsGrams: '0' };
    expect((await service.as.maker.post('/infusions/weights', nothing)).status).toBe(422);
  });
});
