import type { BalanceView, ProvenanceView } from '@api/modules/tracing/provenance.dto';
import type { RecallSizesView } from '@api/modules/tracing/recall-sizes.dto';
import type { TraceView } from '@api/modules/tracing/trace.dto';
import { Books } from '../../support/books/books';
import { day, smallShop } from '../../support/books/small-shop';
import { startTestService, type TestService } from '../../support/service/test-service';

describe('tracing a small workshop', () => {
  let service: TestService;
  let books: Books;

  const trace = async (path: string): Promise<TraceView> =>
    (await service.as.auditor.get(path).expect(200)).body as TraceView;
  const codes = (view: TraceView, side: string) =>
    view.lots
      .filter((lot) => lot.side === side)
      .map((lot) => lot.code)
      .sort();

  beforeAll(async () => {
    service = await startTestService();
    books = await Books.open(service.databaseUrl);
    await smallShop(books);
  });

  afterAll(async () => {
    await books.close();
    await service.close();
  });

  it('goes ahead from a cream to every end, with grams', async () => {
    const view = await trace('/lots/CR1/trace?direction=forward');
    expect(codes(view, 'root')).toEqual(['CR1']);
    expect(codes(view, 'ahead')).toEqual(['B1', 'G1', 'P1']);
    expect(
      view.dispatches.map((row) => [row.dispatch, row.customer, row.lot, row.quantity]),
    ).toEqual([
      ['D1', 'Hotel', 'B1', '6.000'],
      ['D2', null, 'B1', '2.000'],
      ['D2', null, 'P1', '20.000'],
    ]);
    // 600 of the 1610 g that stayed in the mix are CR1; 1530 g were made of it.
    const ganache = view.lots.find((lot) => lot.code === 'G1');
    expect(ganache?.sharedMassGrams).toBe('570.186');
    expect(view.batches.find((batch) => batch.code === 'K2')?.state).toBe('open');
  });

  it('goes back from a box to every supplier, packaging with no grams', async () => {
    const view = await trace('/lots/B1/trace?direction=back');
    expect(codes(view, 'behind')).toEqual(['CH1', 'CR1', 'CR2', 'CT1', 'G1', 'P1', 'T1', 'TEA']);
    const by = new Map(view.lots.map((lot) => [lot.code, lot]));
    expect(by.get('CT1')?.sharedMassGrams).toBe('0.000');
    expect(by.get('TEA')?.sharedMassGrams).toBe('0.000');
    expect(by.get('CR1')?.supplier).toBe('Dairy');
    expect(by.get('CR1')?.supplierLotCode).toBe('S-CR1');
  });

  it('looks both ways from the middle', async () => {
    const view = await trace('/lots/G1/trace');
    expect(codes(view, 'behind')).toEqual(['CH1', 'CR1', 'CR2', 'T1', 'TEA']);
    expect(codes(view, 'ahead')).toEqual(['B1', 'P1']);
  });

  it('links a tank lot to the one before it until the tank is recorded clean', async () => {
    const ahead = await trace('/lots/CH1/trace?direction=forward');
    expect(codes(ahead, 'ahead')).toContain('T2');
    expect(codes(ahead, 'ahead')).not.toContain('T3');
    expect(ahead.lots.find((lot) => lot.code === 'T2')?.sharedMassGrams).toBe('0.000');
    const behind = await trace('/lots/T2/trace?direction=back');
    expect(codes(behind, 'behind')).toEqual(['CH1', 'CH2', 'T1']);
    expect(behind.heelLinks).toEqual([{ batch: 'C2', lot: 'T1' }]);
  });

  it('gives the provenance with parts that sum to the lot', async () => {
    const view = (await service.as.seller.get('/lots/B1/provenance').expect(200))
      .body as ProvenanceView;
    const printed = view.contributions.filter((row) => row.printedGrams !== null);
    const total = printed.reduce(
      (sum, row) => sum + Math.round(Number(row.printedGrams) * 1000),
      0,
    );
    expect(total).toBe(1_440_000);
    const sugarless = view.contributions.find((row) => row.lot === 'CR1');
    // Steam took 80 of 1610 g from the mix, so more cream went in than is inside.
    expect(Number(sugarless?.ingoingGrams)).toBeGreaterThan(Number(sugarless?.massGrams));
  });

  it('balances a cream to the milligram and names the count that found less', async () => {
    const view = (await service.as.auditor.get('/lots/CR1/balance').expect(200))
      .body as BalanceView;
    expect(view.state).toBe('difference-named');
    expect(view.unexplainedQuantity).toBe('0.000');
    expect(view.named.map((line) => line.kind)).toEqual(['count-shortage']);
    const total = view.ends.reduce(
      (sum, line) => sum + Math.round(Number(line.quantity) * 1000),
      0,
    );
    expect(total).toBe(1_000_000);
    expect(new Set(view.ends.map((line) => line.kind))).toEqual(
      new Set([
        'on-hand',
        'loss',
        'dispatched',
        'counter',
        'sampled',
        'open-batch',
        'count-shortage',
      ]),
    );
  });

  it('balances packaging by the piece', async () => {
    const view = (await service.as.auditor.get('/lots/CT1/balance').expect(200))
      .body as BalanceView;
    expect([view.unit, view.state]).toEqual(['pc', 'balanced']);
    expect(view.ends.map((line) => [line.kind, line.quantity])).toEqual([
      ['on-hand', '40.000'],
      ['used', '10.000'],
    ]);
  });

  it('starts from a mould since it was last sound', async () => {
    const view = await trace('/moulds/M1/trace?direction=forward');
    expect(codes(view, 'root')).toEqual(['P1']);
    expect(codes(view, 'ahead')).toEqual(['B1']);
    expect(view.because).toContain('since 2 Mar 2026, 08:00');
  });

  it.each([
    ['a supplier', () => `kind=supplier&id=${books.id('Dairy')}`, ['CR1', 'CR2', 'TEA']],
    ['a delivery', () => `kind=delivery&id=${books.id('delivery CH2')}`, ['CH2']],
    [
      'a specification',
      () => `kind=specification&id=${books.id('specification cream Dairy')}`,
      ['CR1', 'CR2'],
    ],
    ['a recipe version', () => `kind=recipe-version&id=${books.id('version ganache')}`, ['G1']],
    [
      'a tank and a window',
      () => `kind=tank&id=${books.id('Tank 1')}&from=${day(4)}&to=${day(6)}`,
      ['T1', 'T2'],
    ],
    [
      'a place and a window',
      () => `kind=place&id=${books.id('Cold store')}&from=${day(4)}&to=${day(6)}`,
      ['CR1'],
    ],
    ["a supplier's lot as typed", () => 'kind=text&text=S-CH3', ['CH3']],
  ])('starts from %s', async (_, query, roots) => {
    const view = await trace(`/trace?${query()}&direction=forward`);
    expect(view.roots.sort()).toEqual(roots);
  });

  it('shows what a recall of each ingredient lot alone would touch, largest first', async () => {
    const path = '/trace/recall-sizes?days=3650';
    const { sizes } = (await service.as.auditor.get(path).expect(200)).body as RecallSizesView;
    const row = (lot: string) => sizes.find((size) => size.lot === lot);
    // CR1 → G1 → P1 → B1; the tank's first chocolate also stays behind the second.
    expect(row('CR1')).toEqual({
      lot: 'CR1',
      itemName: 'cream',
      supplier: 'Dairy',
      supplierLotCode: 'S-CR1',
      receivedOn: '2026-03-01',
      lots: 3,
      boxes: '8.000',
      pieces: '20.000',
      overTheCounter: '22.000',
      customers: 1,
      boxesHere: '2.000',
    });
    expect(row('CH1')).toMatchObject({ lots: 5, boxes: '8.000', customers: 1 });
    expect(row('CH3')).toMatchObject({ lots: 1, boxes: '0.000', customers: 0 });
    expect(row('CT1')).toBeUndefined();
    const boxes = sizes.map((size) => Number(size.boxes));
    expect(boxes).toEqual([...boxes].sort((a, b) => b - a));
    const tea = await service.as.auditor.get(`${path}&item=${books.id('tea')}`).expect(200);
    expect((tea.body as RecallSizesView).sizes.map((size) => size.lot)).toEqual(['TEA']);
    await service.as.auditor.get('/trace/recall-sizes?days=0').expect(400);
  });

  it('says what is missing or unknown', async () => {
    await service.as.auditor.get('/trace?kind=tank&direction=back').expect(400);
    await service.as.auditor.get('/lots/none/trace').expect(404);
    await service.as.auditor.get('/trace?kind=text&text=nothing').expect(404);
    await service.anonymous.get('/lots/B1/trace').expect(401);
  });

  it('forgets a lot that an opposite entry took out again', async () => {
    expect(codes(await trace('/lots/CR2/trace?direction=forward'), 'ahead')).toContain('G1');
    await books.query('BEGIN');
    await books.undraw('K1', 'CR2', 'the wrong carton was scanned');
    await books.query(
      `INSERT INTO draw (id, batch_id, lot_id, role, quantity, mass_g, cost, reason, user_id)
       SELECT gen_random_uuid(), batch_id, $1, role, 10, 10, 0, 'this one', user_id FROM draw
       WHERE batch_id = $2 AND lot_id = $1 LIMIT 1`,
      [books.id('CR1'), books.id('K1')],
    );
    await books.query('COMMIT');
    expect(codes(await trace('/lots/CR2/trace?direction=forward'), 'ahead')).toEqual([]);
    const ganache = await trace('/lots/G1/trace?direction=back');
    expect(codes(ganache, 'behind')).not.toContain('CR2');
  });
});
