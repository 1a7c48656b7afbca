import type { TraceView } from '@api/modules/tracing/trace.dto';
import { Books } from '../../support/books/books';
import { day, smallShop } from '../../support/books/small-shop';
import { askPdf } from '../../support/papers/ask-pdf';
import { allText, readPdf } from '../../support/papers/read-pdf';
import { startTestService, type TestService } from '../../support/service/test-service';

describe('where a trace can start', () => {
  let service: TestService;
  let books: Books;

  const trace = async (query: string): Promise<TraceView> =>
    (await service.as.auditor.get(`/trace?${query}&direction=forward`).expect(200))
      .body as TraceView;
  const rootsOf = async (query: string): Promise<string[]> => (await trace(query)).roots.sort();

  /** Written as the service writes it; see the test of a real move below. */
  const movedAt = (lot: string, at: string, from: string | null, to: string) =>
    books.query(
      `INSERT INTO journal_entry (at, user_id, user_name, action, subject_kind, subject_id, detail)
       SELECT $1::timestamptz, id, name, 'lot.moved', 'lot', $2::text,
         jsonb_build_object('fromId', $3::text, 'toId', $4::text) FROM app_user LIMIT 1`,
      [at, lot, from === null ? null : books.id(from), books.id(to)],
    );
  const placed = (lot: string, place: string) =>
    books.query('UPDATE lot SET place_id = $1 WHERE code = $2', [books.id(place), lot]);
  const reading = async (at: string, verdict: 'in' | 'high', undoes?: string): Promise<string> => {
    const { rows } = await books.query(
      `INSERT INTO reading (id, measure, value, verdict, place_id, reverses_id, at, user_id)
       SELECT gen_random_uuid(), 'temp_c', $1, $2, $3, $4::uuid, $5::timestamptz, id
       FROM app_user LIMIT 1 RETURNING id`,
      [verdict === 'in' ? 4 : 11, verdict, books.id('Fridge'), undoes ?? null, at],
    );
    return String(rows[0]?.['id']);
  };

  beforeAll(async () => {
    service = await startTestService();
    books = await Books.open(service.databaseUrl);
    await smallShop(books);
    await books.place('Fridge');
    // G1 stood in the fridge from the 6th to the 8th; P1 came into it on the 10th and stays.
    await movedAt('G1', day(6), null, 'Fridge');
    await movedAt('G1', day(8), 'Fridge', 'Cold store');
    await placed('G1', 'Cold store');
    await movedAt('P1', day(10), null, 'Fridge');
    await placed('P1', 'Fridge');
  });

  afterAll(async () => {
    await books.close();
    await service.close();
  });

  it.each([
    ['before anything came', 3, 5, []],
    ['while only the ganache stood there', 7, 7, ['G1']],
    ['after the ganache had left and before the pieces came', 9, 9, []],
    ['over both', 7, 11, ['G1', 'P1']],
  ])('a fridge and a window: %s', async (_, from, to, expected) => {
    const query = `kind=place&id=${books.id('Fridge')}&from=${day(from)}&to=${day(to)}`;
    expect(await rootsOf(query)).toEqual(expected);
  });

  it('a fridge is found by its stays whatever it is called now', async () => {
    await books.query(`UPDATE place SET name = 'Old fridge' WHERE id = $1`, [books.id('Fridge')]);
    const query = `kind=place&id=${books.id('Fridge')}&from=${day(7)}&to=${day(7)}`;
    expect(await rootsOf(query)).toEqual(['G1']);
    await books.query(`UPDATE place SET name = 'Fridge' WHERE id = $1`, [books.id('Fridge')]);
  });

  it('a place says how many lots nobody recorded a place for', async () => {
    const query = `kind=place&id=${books.id('Fridge')}&from=${day(7)}&to=${day(7)}`;
    expect((await trace(query)).because).toMatch(
      /1 lot kept in Fridge .*; of \d+ more nobody recorded where they stood: they are not in it/,
    );
  });

  it('a lot that is moved through the service is found where it stood before', async () => {
    const before = new Date().toISOString();
    await service.as.maker.post('/lots/CR2/place', { placeId: books.id('Fridge') }).expect(201);
    const to = `&from=${before}&to=${new Date().toISOString()}`;
    expect(await rootsOf(`kind=place&id=${books.id('Fridge')}${to}`)).toContain('CR2');
  });

  it('a reading that failed: what stood there between the sound readings around it', async () => {
    await reading('2026-03-05T20:00:00Z', 'in');
    const warm = await reading('2026-03-07T20:00:00Z', 'high');
    // A sound reading that was taken back proves nothing; the next one that stands is later.
    const wrong = await reading('2026-03-08T20:00:00Z', 'in');
    await reading('2026-03-08T21:00:00Z', 'in', wrong);
    await reading('2026-03-10T20:00:00Z', 'in');
    const view = await trace(`kind=reading&id=${warm}`);
    expect(view.roots.sort()).toEqual(['G1', 'P1']);
    expect(view.because).toContain('temp_c 11 (high)');
  });

  it('a reading of a lot or a batch that failed', async () => {
    const failed = async (column: string, id: string): Promise<string> => {
      const { rows } = await books.query(
        `INSERT INTO reading (id, measure, value, verdict, ${column}, user_id)
         SELECT gen_random_uuid(), 'ph', 7, 'high', $1, id FROM app_user LIMIT 1 RETURNING id`,
        [id],
      );
      return String(rows[0]?.['id']);
    };
    const ofBatch = await failed('batch_id', books.id('K1'));
    expect(await rootsOf(`kind=reading&id=${ofBatch}`)).toEqual(['G1']);
    expect(await rootsOf(`kind=reading&id=${await failed('lot_id', books.id('CR1'))}`)).toEqual([
      'CR1',
    ]);
    const seen = await service.as.auditor.get('/lots/G1/trace').expect(200);
    expect((seen.body as TraceView).failedReadings.map((row) => row.id)).toContain(ofBatch);
  });

  it('a mould design: all its trays, each since it was last found sound', async () => {
    await books.mould('M2');
    await books.made({
      code: 'S7',
      kind: 'cast',
      at: day(11),
      draws: [['T3', '500']],
      outputs: [{ code: 'P7', item: 'bonbon', quantity: '40', grams: '500' }],
    });
    await books.cast('S7', 'M2', day(11));
    expect(await rootsOf(`kind=mould-design&id=${books.id('design')}`)).toEqual(['P1', 'P7']);
    // Found on the 3rd: before either tray was used again, and M1 was never found sound later.
    const early = `kind=mould-design&id=${books.id('design')}&from=${day(12)}`;
    expect(await rootsOf(early)).toEqual(['P1', 'P7']);
    await books.inspected('M2', '2026-03-12T10:00:00Z', 'sound');
    expect(await rootsOf(`kind=mould-design&id=${books.id('design')}`)).toEqual(['P1']);
  });

  it('a mould or a lot by its code, an item by its id', async () => {
    expect(await rootsOf('kind=mould&text=M1')).toEqual(['P1']);
    expect(await rootsOf('kind=lot&text=CR1')).toEqual(['CR1']);
    expect(await rootsOf(`kind=item&id=${books.id('tea')}`)).toEqual(['TEA']);
  });

  it.each([
    ['a mould tag', 'M1', ['P1']],
    ['a lot', 'B1', ['B1']],
    ["a supplier's lot", 'S-CH2', ['CH2']],
    ['the code of a batch', 'K1', ['G1']],
    ['the code of a dispatch', 'D1', ['B1']],
  ])('scanned text that is %s', async (_, text, expected) => {
    expect(await rootsOf(`kind=text&text=${encodeURIComponent(text)}`)).toEqual(expected);
  });

  it('a tank and a window keeps to the chain since it was last empty and clean', async () => {
    const window = (from: number, to: number) =>
      `kind=tank&id=${books.id('Tank 1')}&from=${day(from)}&to=${day(to)}`;
    expect(await rootsOf(window(3, 4))).toEqual(['T1']);
    expect(await rootsOf(window(6, 6))).toEqual(['T1', 'T2']);
    expect(await rootsOf(window(9, 9))).toEqual(['T3']);
    const view = await trace(window(9, 9));
    expect(view.lots.map((lot) => lot.code)).not.toContain('T2');
  });

  it('prints the trace of anything, in the direction that was asked', async () => {
    const print = async (path: string): Promise<string> =>
      allText(readPdf(await askPdf(service.as.auditor.get(path)), 'trace-from'));
    const query = `kind=supplier&id=${books.id('Dairy')}`;
    const both = await print(`/trace/report.pdf?${query}`);
    expect(both).toContain('of the supplier');
    expect(both).toContain('Caution: This list holds what was booked');
    expect(both).toContain('Hotel');
    const back = await print('/lots/G1/trace.pdf?direction=back&language=en');
    expect(back).toContain('S-CR1');
    expect(back).not.toContain('Hotel');
    expect(await print('/moulds/M1/trace.pdf?direction=forward')).toContain('Hotel');
    await service.as.auditor.get('/lots/G1/trace.pdf?direction=up').expect(400);
  });
});
