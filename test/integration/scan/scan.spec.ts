import { GROUP_SEPARATOR, withCheckDigit } from '@api/domain/identification';
import {
  startTestService,
  type TestRole,
  type TestService,
} from '../../support/service/test-service';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';

interface Scan {
  readonly kind: string;
  readonly code: string | null;
  readonly title: string;
  readonly warning: string | null;
  readonly actions: readonly { action: string; possible: boolean; because: string | null }[];
  readonly lots: readonly { code: string; onHold: boolean }[];
  readonly goodsIn: Record<string, unknown> | null;
}

let service: TestService;
let kitchen: Kitchen;
let cream: string;
beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-25T09:00:00Z'));
  kitchen = await openKitchen(service);
  cream = await kitchen.receive(kitchen.cream, '2000', {
    useBy: '2026-12-05',
    supplierLotCode: 'LV-8841',
  });
});
afterAll(() => service.close());

const scan = async (text: string, role: TestRole = 'maker'): Promise<Scan> => {
  const answer = await service.as[role].get(`/scan?text=${encodeURIComponent(text)}`);
  expect(answer.status).toBe(200);
  return answer.body as Scan;
};

const may = ({ actions }: Scan, action: string): boolean | undefined =>
  actions.find((entry) => entry.action === action)?.possible;

describe('scanning', () => {
  it('opens a lot by its code, as scanned and as a person types it', async () => {
    for (const text of [cream, cream.toLowerCase(), `L${cream}`, ` ${cream}\n`]) {
      const found = await scan(text);
      expect(found).toMatchObject({ kind: 'lot', code: cream, warning: null });
      expect(may(found, 'draw')).toBe(true);
    }
  });

  it('lets an auditor look and nothing else', async () => {
    const found = await scan(cream, 'auditor');
    expect(may(found, 'trace')).toBe(true);
    expect(found.actions.find(({ action }) => action === 'draw')).toEqual({
      action: 'draw',
      possible: false,
      because: 'The role auditor may not do this.',
    });
  });

  it('says why a held lot can’t be drawn, and offers its release to the owner', async () => {
    const held = await kitchen.receive(kitchen.cream, '500', { useBy: '2026-12-06' });
    await service.as.maker.post(`/lots/${held}/holds`, { reason: 'carton was wet' }).expect(201);
    const found = await scan(held, 'owner');
    expect(found.warning).toContain('carton was wet');
    expect(found.actions.find(({ action }) => action === 'draw')).toMatchObject({
      possible: false,
      because: expect.stringContaining(held) as string,
    });
    expect(may(found, 'release')).toBe(true);
    expect(may(await scan(held, 'maker'), 'release')).toBe(false);
  });

  it('reads a supplier’s symbol into goods in, and finds the lots of it that are here', async () => {
    const gtin = withCheckDigit('0950600013435');
    const text = `]d201${gtin}1726120510LV-8841${GROUP_SEPARATOR}3103002000`;
    const found = await scan(text);
    expect(found).toMatchObject({
      kind: 'goods',
      code: 'LV-8841',
      lots: [{ code: cream }],
      goodsIn: {
        gtin,
        itemId: null,
        supplierLotCode: 'LV-8841',
        useBy: '2026-12-05',
        netMassGrams: '2000.000',
      },
    });
    expect(may(found, 'receive')).toBe(true);
    expect(may(await scan(text, 'seller'), 'receive')).toBe(false);
  });

  it('opens moulds, places, tanks and batches by their tags', async () => {
    const moulds = await service.as.maker
      .post('/moulds', { designId: kitchen.designId, count: 1 })
      .expect(201);
    const [mould] = (moulds.body as { items: { tag: string }[] }).items;
    const place = await service.as.maker
      .post('/places', { name: 'Fridge 9', kind: 'fridge', minTempC: '1', maxTempC: '4' })
      .expect(201);
    const batch = await service.as.maker.post('/batches', { itemId: kitchen.ganache }).expect(201);
    const tank = await service.as.maker
      .post('/tanks', { name: 'Wheel 9', itemId: kitchen.couverture, capacityGrams: '6000' })
      .expect(201);
    const found = await scan(mould?.tag ?? '');
    expect(found).toMatchObject({ kind: 'mould', code: mould?.tag });
    expect(may(found, 'use_mould')).toBe(true);
    expect(await scan((place.body as { tag: string }).tag)).toMatchObject({ kind: 'place' });
    expect(await scan((batch.body as { code: string }).code)).toMatchObject({ kind: 'batch' });
    const empty = await scan((tank.body as { tag: string }).tag);
    expect(empty).toMatchObject({
      kind: 'tank',
      title: expect.stringContaining('Wheel 9') as string,
    });
    expect(may(empty, 'draw')).toBe(false);
    expect(may(empty, 'charge')).toBe(true);
  });

  it.each(['cream', '😀', '(01)123', 'https://example.test/', 'D-261125-0017', '0'.repeat(1999)])(
    'says that %j is not known, and why',
    async (text) => {
      const found = await scan(text);
      expect(found).toMatchObject({ kind: 'unknown', code: null, actions: [] });
      expect(found.warning).not.toBe('');
    },
  );

  it.each(['', 'x'.repeat(2001)])('refuses a text that is no scan', async (text) => {
    await service.as.maker.get(`/scan?text=${text}`).expect(400);
  });

  it('is not for strangers', async () => {
    await service.anonymous.get('/scan?text=x').expect(401);
  });
});
