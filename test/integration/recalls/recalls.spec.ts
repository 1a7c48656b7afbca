import type { RecallView } from '@api/modules/recalls';
import { Books } from '../../support/books/books';
import { smallShop } from '../../support/books/small-shop';
import { startTestService, type TestService } from '../../support/service/test-service';

describe('a recall', () => {
  let service: TestService;
  let books: Books;

  beforeEach(async () => {
    service = await startTestService();
    books = await Books.open(service.databaseUrl);
    await smallShop(books);
    await books.customer('Grocer');
  });

  afterEach(async () => {
    await books.close();
    await service.close();
  });

  const open = async (mode: 'real' | 'rehearsal', start: object): Promise<RecallView> =>
    (
      await service.as.maker
        .post('/recalls', { mode, reason: 'metal in the cream', starts: [start] })
        .expect(201)
    ).body as RecallView;
  const post = async (path: string, body: object = {}, status = 200): Promise<RecallView> =>
    (await service.as.maker.post(path, body).expect(status)).body as RecallView;
  const onHand = async (code: string): Promise<string> => {
    const found = await books.query('SELECT on_hand_quantity FROM lot WHERE code = $1', [code]);
    return String(found.rows[0]?.['on_hand_quantity']);
  };

  it('goes from a lot to a closed case, with everything counted', async () => {
    const opened = await open('real', { kind: 'lot', text: 'CR1' });
    const at = `/recalls/${opened.code}`;
    expect(opened.scope.lots.map((lot) => lot.code).sort()).toEqual(['B1', 'CR1', 'G1', 'P1']);
    expect(opened.customers.map((customer) => customer.name)).toEqual(['Hotel']);
    expect(opened.notHeld.sort()).toEqual(['B1', 'CR1', 'G1', 'P1']);

    const held = await post(`${at}/holds`);
    expect(held.notHeld).toEqual([]);
    const refused = await service.as.maker.post('/recalls/none/holds').expect(404);
    expect(refused.body).toMatchObject({ status: 404 });
    await expect(books.sent('D3', 'Grocer', '2026-03-12', { B1: ['1', '144'] })).rejects.toThrow(
      /on hold/,
    );

    await service.as.maker
      .post(`${at}/recoveries`, { lines: [{ lot: 'B1', quantity: '1', outcome: 'returned' }] })
      .expect(422);
    const frozen = await post(`${at}/freeze`);
    expect([frozen.state, frozen.changes]).toEqual(['frozen', []]);

    const hotel = books.id('Hotel');
    await post(`${at}/notes`, { kind: 'customer_told', customerId: hotel, text: 'by phone' });
    const recovered = await post(`${at}/recoveries`, {
      lines: [
        { lot: 'B1', customerId: hotel, quantity: '4', outcome: 'returned' },
        { lot: 'B1', customerId: hotel, quantity: '1', outcome: 'destroyed' },
        { lot: 'P1', quantity: '5', outcome: 'returned' },
      ],
    });
    expect(await onHand('B1')).toBe('6.000');
    expect(recovered.customers[0]).toMatchObject({
      told: true,
      distributedGrams: '864.000',
      recoveredGrams: '720.000',
    });
    expect(recovered.effectiveness).toMatchObject({
      distributedGrams: '1392.000',
      recoveredGrams: '780.000',
      recoveredPercent: '56.0',
    });
    await service.as.maker
      .post(`${at}/recoveries`, {
        lines: [{ lot: 'B1', customerId: hotel, quantity: '2', outcome: 'returned' }],
      })
      .expect(422);

    const closed = await post(`${at}/close`, { conclusion: 'A worn sieve was replaced.' });
    expect(closed.state).toBe('closed');
    expect(closed.closeReport).toMatchObject({ customers: 1, lots: 4 });
    await service.as.maker.post(`${at}/notes`, { kind: 'note', text: 'late' }).expect(422);
  });

  it('shows what was learned after it was frozen, and holds it on a second step', async () => {
    const { code } = await open('real', { kind: 'lot', text: 'CR1' });
    await post(`/recalls/${code}/freeze`);
    await books.made({
      code: 'K9',
      at: '2026-03-13T08:00:00Z',
      draws: [['CR1', '50']],
      outputs: [{ code: 'G9', item: 'ganache', grams: '50' }],
    });
    const view = (await service.as.auditor.get(`/recalls/${code}`).expect(200)).body as RecallView;
    expect(view.scope.lots.map((lot) => lot.code)).not.toContain('G9');
    expect(view.changes).toEqual([
      { lot: 'G9', change: 'now-in-scope', fields: [] },
      {
        lot: 'CR1',
        change: 'quantity',
        fields: [{ field: 'onHand', was: '400.000', is: '350.000' }],
      },
    ]);
    expect(view.notHeld).toContain('G9');
    expect(view.here.find((row) => row.lot === 'G9')).toMatchObject({
      quantity: '50.000',
      held: false,
      learnedLater: true,
    });
    expect((await post(`/recalls/${code}/holds`)).notHeld).toEqual([]);
  });

  it('counts in what was sold and learned of only after freezing, and says so', async () => {
    const { code } = await open('real', { kind: 'lot', text: 'CR1' });
    await post(`/recalls/${code}/freeze`);
    // Sold from a lot in scope, by a seller whose tablet had been out of reach.
    await books.sent('D9', 'Grocer', '2026-03-12', { B1: ['1', '144'] });
    const view = (await service.as.auditor.get(`/recalls/${code}`).expect(200)).body as RecallView;
    expect(view.scope.sales.map((sale) => sale.dispatch)).not.toContain('D9');
    expect(view.learned.sales.map((sale) => sale.dispatch)).toEqual(['D9']);
    expect(
      view.customers.map(({ name, boxes, learnedLater }) => [name, boxes, learnedLater]),
    ).toEqual([
      ['Grocer', '1.000', true],
      ['Hotel', '6.000', false],
    ]);
    expect(view.effectiveness.distributedGrams).toBe('1536.000');
    const csv = (await service.as.auditor.get(`/recalls/${code}/list.csv`).expect(200)).text;
    expect(csv).toContain('customer,Grocer,,,,D9,2026-03-12,B1,box,1.000,pc,144.000,,yes');
    const grocer = books.id('Grocer');
    const back = await post(`/recalls/${code}/recoveries`, {
      lines: [{ lot: 'B1', customerId: grocer, quantity: '1', outcome: 'returned' }],
    });
    expect(back.customers[0]).toMatchObject({ name: 'Grocer', recoveredGrams: '144.000' });
  });

  it('takes no goods of another lot for recovered ones', async () => {
    const { code } = await open('real', { kind: 'lot', text: 'CR1' });
    await post(`/recalls/${code}/freeze`);
    await books.sent('D8', 'Grocer', '2026-03-12', { T3: ['100', '100'] });
    const line = { lot: 'T3', customerId: books.id('Grocer'), quantity: '100' };
    const refused = await service.as.maker
      .post(`/recalls/${code}/recoveries`, { lines: [{ ...line, outcome: 'returned' }] })
      .expect(422);
    expect((refused.body as { detail: string }).detail).toContain('T3 is not in recall');
  });

  it('does not wait for what had come back before the recall', async () => {
    const line = await books.query(
      `SELECT line.id FROM dispatch_line line JOIN dispatch ON dispatch.id = dispatch_id
       WHERE code = 'D1'`,
    );
    await books.query(
      `INSERT INTO movement (id, lot_id, quantity, mass_g, cost, kind, dispatch_line_id, reason, user_id)
       SELECT gen_random_uuid(), $1, 2, 288, 0, 'returned', $2, 'a box too many', id
       FROM app_user LIMIT 1`,
      [books.id('B1'), line.rows[0]?.['id']],
    );
    const { customers, scope } = await open('real', { kind: 'lot', text: 'CR1' });
    expect(customers[0]).toMatchObject({ boxes: '4.000', distributedGrams: '576.000' });
    expect(scope.sales[0]).toMatchObject({ quantity: '6.000', returnedQuantity: '2.000' });
  });

  it('keeps a lot that a person took out, with the reason, and leaves it free', async () => {
    const { code } = await open('real', { kind: 'lot', text: 'CH1' });
    const frozen = await post(`/recalls/${code}/freeze`, {
      excluded: [{ lot: 'T2', reason: 'the tank was washed, and forgotten to be booked' }],
    });
    expect(frozen.scope.excluded).toHaveLength(1);
    expect(frozen.changes).toEqual([]);
    const held = await post(`/recalls/${code}/holds`);
    expect(held.notHeld).toEqual([]);
    const found = await books.query(
      `SELECT lot.code FROM hold JOIN lot ON lot.id = hold.lot_id WHERE hold.kind = 'recall'`,
    );
    expect(found.rows.map((row) => row['code'])).not.toContain('T2');
  });

  it('rehearses: timed, on record, nothing held and nothing booked', async () => {
    const { code } = await open('rehearsal', { kind: 'mould', text: 'M1' });
    await post(`/recalls/${code}/holds`);
    expect(await books.query('SELECT 1 FROM hold').then((held) => held.rows)).toEqual([]);
    await post(`/recalls/${code}/freeze`);
    await post(`/recalls/${code}/recoveries`, {
      lines: [{ lot: 'P1', quantity: '20', outcome: 'returned' }],
    });
    expect(await onHand('P1')).toBe('96.000');
    const closed = await post(`/recalls/${code}/close`, { conclusion: 'It took four minutes.' });
    expect(closed.actions.map((action) => action.kind)).toEqual([
      'opened',
      'held',
      'frozen',
      'recovered',
      'closed',
    ]);
    expect(closed.closeReport).toHaveProperty('secondsToClose');
    const listed = await service.as.auditor.get('/recalls?state=closed').expect(200);
    expect((listed.body as { items: unknown[] }).items).toHaveLength(1);
  });

  it('prints the list as CSV, and no cell of it is a formula', async () => {
    await books.query(`UPDATE customer SET phone = '=1+1' WHERE name = 'Hotel'`);
    const { code } = await open('real', { kind: 'lot', text: 'CR1' });
    const csv = (await service.as.auditor.get(`/recalls/${code}/list.csv`).expect(200)).text;
    const [header, first] = csv.split('\r\n');
    expect(header).toContain('where,name,address');
    expect(first).toBe("customer,Hotel,,'=1+1,,D1,2026-03-10,B1,box,6.000,pc,864.000,,");
  });

  it('finds nothing to recall, and lets an auditor only look', async () => {
    await service.as.maker
      .post('/recalls', {
        mode: 'real',
        reason: 'x',
        starts: [{ kind: 'supplier', id: books.id('Hotel') }],
      })
      .expect(422);
    await service.as.auditor
      .post('/recalls', { mode: 'real', reason: 'x', starts: [{ kind: 'lot', text: 'CR1' }] })
      .expect(403);
  });

  it('is opened once when the request is sent twice', async () => {
    const body = { mode: 'real', reason: 'x', starts: [{ kind: 'lot', text: 'CR1' }] };
    const first = await service.as.maker.post('/recalls', body, 'the-same-key').expect(201);
    const second = await service.as.maker.post('/recalls', body, 'the-same-key').expect(201);
    expect((second.body as RecallView).code).toBe((first.body as RecallView).code);
    const cases = await books.query('SELECT code FROM recall_case');
    expect(cases.rows).toHaveLength(1);
  });
});
