import { Books } from '../../support/books/books';
import { smallShop } from '../../support/books/small-shop';
import { epcisValidator } from '../../support/epcis/schema';
import { startTestService, type TestService } from '../../support/service/test-service';

interface Event {
  readonly type: string;
  readonly bizStep: string;
  readonly eventTime: string;
  readonly [key: string]: unknown;
}

describe('exports', () => {
  let service: TestService;
  let books: Books;

  beforeAll(async () => {
    service = await startTestService();
    books = await Books.open(service.databaseUrl);
    await smallShop(books);
  });

  afterAll(async () => {
    await books.close();
    await service.close();
  });

  const eventsOf = async (query: string): Promise<Event[]> => {
    const answer = await service.as.auditor
      .get(`/exports/events?${query}`)
      .buffer(true)
      .parse((stream, done) => {
        let text = '';
        stream.on('data', (piece: Buffer) => (text += piece.toString()));
        stream.on('end', () => done(null, text));
      })
      .expect(200)
      .expect('Content-Type', /application\/ld\+json/);
    const document = JSON.parse(answer.body as string) as { epcisBody: { eventList: Event[] } };
    const valid = epcisValidator();
    expect(valid(document) || valid.errors).toBe(true);
    return document.epcisBody.eventList;
  };

  it('writes each fact of the record once, oldest first, as valid EPCIS 2.0', async () => {
    const events = await eventsOf('');
    const steps = events.map((event) => event.bizStep.replace(/^.*\//, ''));
    expect(steps.filter((step) => step === 'receiving')).toHaveLength(7);
    expect(steps.filter((step) => step === 'commissioning')).toHaveLength(2);
    expect(steps.filter((step) => step === 'charging-a-tank')).toHaveLength(3);
    expect(steps.filter((step) => step === 'packing')).toHaveLength(1);
    expect(steps.filter((step) => step === 'shipping')).toHaveLength(1);
    expect(steps.filter((step) => step === 'retail_selling')).toHaveLength(1);
    expect(steps.filter((step) => step === 'destroying')).toHaveLength(1);
    const times = events.map((event) => event.eventTime);
    expect(times).toEqual([...times].sort());
  });

  it('keeps to a period', async () => {
    const events = await eventsOf('from=2026-03-04&to=2026-03-05');
    expect(events.map((event) => event.eventTime.slice(0, 10))).toEqual([
      '2026-03-04',
      '2026-03-05',
    ]);
  });

  it('keeps to what touched the lots of a recall case', async () => {
    const opened = await service.as.maker
      .post('/recalls', { mode: 'rehearsal', reason: 'x', starts: [{ kind: 'lot', text: 'CR1' }] })
      .expect(201);
    const events = await eventsOf(`recall=${(opened.body as { code: string }).code}`);
    const text = JSON.stringify(events);
    expect(text).toContain('/lots/CR1');
    expect(events.filter((event) => event.bizStep === 'receiving')).toHaveLength(1);
    await service.as.auditor.get('/exports/events?recall=none').expect(404);
  });

  it('says what was destroyed with a batch that was given up, less what went back', async () => {
    await books.made({
      code: 'K7',
      at: '2026-03-14T08:00:00Z',
      draws: [
        ['CR1', '10'],
        ['T3', '20'],
      ],
      outputs: [{ code: 'never again', item: 'ganache', grams: '1' }],
      open: true,
    });
    await books.query('BEGIN');
    await books.undraw('K7', 'CR1', 'not touched');
    await books.query(
      `INSERT INTO batch_loss (id, batch_id, kind, mass_g, at, user_id)
       SELECT gen_random_uuid(), $1, 'other', 20, now(), id FROM app_user LIMIT 1`,
      [books.id('K7')],
    );
    await books.query(
      `UPDATE batch SET state = 'abandoned', end_reason = 'curdled',
         ended_at = '2026-03-14T09:00:00Z' WHERE id = $1`,
      [books.id('K7')],
    );
    await books.query('COMMIT');
    const [event, ...others] = await eventsOf('from=2026-03-14&to=2026-03-14');
    expect(others).toEqual([]);
    expect(event).toMatchObject({
      bizStep: 'destroying',
      quantityList: [{ quantity: 20, uom: 'GRM' }],
    });
    expect(JSON.stringify(event)).not.toContain('CR1');
  });

  it('shares the contents of a packing among its box lots without counting them twice', async () => {
    await books.made({
      code: 'X2',
      kind: 'pack',
      at: '2026-03-15T08:00:00Z',
      draws: [['P1', '24', '288']],
      outputs: [
        { code: 'B2', item: 'box', quantity: '1', grams: '144' },
        { code: 'B3', item: 'box', quantity: '1', grams: '144' },
      ],
    });
    const events = await eventsOf('from=2026-03-15&to=2026-03-15');
    expect(events.map((event) => event['childQuantityList'])).toEqual([
      [{ epcClass: expect.stringMatching(/lots\/P1$/) as string }],
      [{ epcClass: expect.stringMatching(/lots\/P1$/) as string }],
    ]);
    expect(new Set(events.map((event) => event['eventID'])).size).toBe(2);
  });

  it('lists every lot as a table that sorts', async () => {
    const csv = (await service.as.auditor.get('/exports/lots.csv').expect(200)).text;
    const lines = csv.trim().split('\r\n');
    expect(lines[0]).toContain('lot_code,item,kind,unit,origin');
    const codes = lines.slice(1).map((line) => line.split(',')[0]);
    expect(codes).toEqual([...codes].sort());
    expect(codes).toContain('CR1');
    const box = lines.find((line) => line.startsWith('B1,'));
    expect(box).toBe(
      'B1,box,box,pc,made,X1,,,2026-03-09,,,,10.000,1440.000,2.000,288.000,8.000,no',
    );
  });
});
