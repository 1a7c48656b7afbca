import { askPdf } from '../../support/papers/ask-pdf';
import { allText, readPdf } from '../../support/papers/read-pdf';
import { startTestService, type TestService } from '../../support/service/test-service';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';

interface Day {
  readonly day: string;
  readonly entries: readonly { kind: string; time: string; what: string; attention: boolean }[];
}

let service: TestService;
let kitchen: Kitchen;
let fridge: { readonly id: string };
let cream: string;
beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-25T07:02:00Z'));
  kitchen = await openKitchen(service);
  const place = await service.as.maker
    .post('/places', {
      ...{ name: 'Fridge 1', kind: 'fridge', minTempC: '1', maxTempC: '4' },
      readingEveryHours: 12,
    })
    .expect(201);
  fridge = place.body as { id: string };
  cream = await kitchen.receive(kitchen.cream, '2000', {
    useBy: '2026-12-05',
    placeId: fridge.id,
  });
});
afterAll(() => service.close());

const diary = async (from: string, to = from): Promise<Day[]> => {
  const answer = await service.as.auditor.get(`/diary?from=${from}&to=${to}`).expect(200);
  return (answer.body as { days: Day[] }).days;
};

describe('readings', () => {
  it('are due until one is taken, and again after so many hours', async () => {
    const due = async (): Promise<boolean | undefined> =>
      ((await service.as.seller.get('/readings/due').expect(200)).body as { overdue: boolean }[])[0]
        ?.overdue;
    expect(await due()).toBe(true);
    await service.as.seller
      .post('/readings', { measure: 'temp_c', value: '3.2', placeId: fridge.id })
      .expect(201);
    expect(await due()).toBe(false);
    service.clock.setTo(new Date('2026-11-25T19:02:00Z'));
    expect(await due()).toBe(true);
  });

  it('out of the place’s limits hold all that stands there, when asked', async () => {
    const body = {
      ...{ measure: 'temp_c', value: '7.9', placeId: fridge.id, holdLots: true },
      correctiveAction: 'door was open; moved to fridge 2',
    };
    const taken = await service.as.maker.post('/readings', body).expect(201);
    expect(taken.body).toMatchObject({
      verdict: 'high',
      low: '1',
      high: '4',
      placeName: 'Fridge 1',
      userName: 'The maker',
      heldLots: [cream],
    });
    const lot = await service.as.auditor.get(`/lots/${cream}`).expect(200);
    expect(lot.body).toMatchObject({ onHold: true, holds: [{ kind: 'temperature' }] });
  });

  it('are listed newest first, page by page, without a gap', async () => {
    const seen: string[] = [];
    let after = '';
    do {
      const answer = await service.as.auditor
        .get(`/readings?limit=1&placeId=${fridge.id}${after}`)
        .expect(200);
      const page = answer.body as { items: { value: string }[]; next: string | null };
      seen.push(...page.items.map(({ value }) => value));
      after = page.next === null ? '' : `&after=${page.next}`;
    } while (after !== '');
    expect(seen).toEqual(['7.9', '3.2']);
  });

  it.each([
    [{ measure: 'temp_c', value: '3' }, 422],
    [{ measure: 'temp_c', value: 'warm', lotCode: 'x' }, 400],
    [{ measure: 'temp_c', value: '3', lotCode: 'no-such-lot' }, 404],
    [{ measure: 'weight', value: '3', lotCode: 'x' }, 400],
  ])('of %j are refused with %d', async (body, status) => {
    await service.as.maker.post('/readings', body).expect(status);
  });

  it('are not for the auditor to take', async () => {
    await service.as.auditor
      .post('/readings', { measure: 'temp_c', value: '3', placeId: fridge.id })
      .expect(403);
  });
});

describe('diary', () => {
  it('shows readings, cleaning, mould checks, holds and work on the workshop’s own day', async () => {
    // 23:30 UTC is 00:30 of the next day in Brussels.
    service.clock.setTo(new Date('2026-11-25T23:30:00Z'));
    await service.as.maker
      .post('/cleanings', { what: 'shelves wiped', placeId: fridge.id })
      .expect(201);
    const made = await service.as.maker
      .post('/moulds', { designId: kitchen.designId, count: 1 })
      .expect(201);
    const tag = (made.body as { items: { tag: string }[] }).items[0]?.tag ?? '';
    await service.as.maker
      .post(`/moulds/${tag}/inspections`, { result: 'chipped', note: 'corner of cavity 7' })
      .expect(201);
    const [first, second] = await diary('2026-11-25', '2026-11-26');
    expect(first?.entries.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['work', 'reading', 'hold']),
    );
    // Goods in are named by who brought them, not by an id.
    expect(first?.entries).toContainEqual(
      expect.objectContaining({
        what: 'goods taken in',
        subject: expect.stringMatching(/^Supplier /) as unknown,
      }),
    );
    expect(second?.day).toBe('2026-11-26');
    expect(second?.entries).toEqual([
      expect.objectContaining({ kind: 'cleaning', time: '00:30', what: 'shelves wiped' }),
      expect.objectContaining({ kind: 'mould', attention: false }),
      expect.objectContaining({ kind: 'mould', attention: true }),
    ]);
  });

  it('is told in the language of whoever reads it', async () => {
    const answer = await service.as.auditor
      .get('/diary?from=2026-11-25&to=2026-11-26')
      .set('Accept-Language', 'fr')
      .expect(200);
    const told = (answer.body as { days: Day[] }).days.flatMap(({ entries }) =>
      entries.map(({ what }) => what),
    );
    expect(told).toContain('marchandise reçue');
    expect(told).toContain('3,2 °C (limites 1 à 4)');
    expect(told).toContain('ÉBRÉCHÉ\u00a0: corner of cavity 7');
  });

  it('comes as a PDF that says the same', async () => {
    const bytes = await askPdf(service.as.auditor.get('/diary.pdf?from=2026-11-25&to=2026-11-26'));
    const text = allText(readPdf(bytes, 'http-diary'));
    for (const words of [
      'Diary',
      '7.9 °C (limits 1 to 4)',
      'door was open',
      'shelves wiped',
      'CHIPPED',
    ]) {
      expect(text).toContain(words);
    }
  });

  it.each(['from=2026-11-26&to=2026-11-25', 'from=2026-01-01&to=2026-12-31'])(
    'refuses the span %s',
    async (span) => {
      await service.as.auditor.get(`/diary?${span}`).expect(422);
    },
  );
});
