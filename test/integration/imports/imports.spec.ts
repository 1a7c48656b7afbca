import { startTestService, type TestService } from '../../support/service/test-service';
import { addItem, addSupplier } from '../../support/workshop/fixtures';

let service: TestService;
beforeAll(async () => {
  service = await startTestService();
  await addSupplier(service, 'Valley Dairy Invented');
});
afterAll(() => service.close());

interface Report {
  readonly created: number;
  readonly changed: number;
  readonly unchanged: number;
  readonly written: boolean;
  readonly problems: readonly { line: number; column: string | null; message: string }[];
}

const send = (register: string, csv: string, dryRun?: boolean) =>
  service.as.maker.post(`/imports/${register}`, {
    csv,
    ...(dryRun === undefined ? {} : { dryRun }),
  });
const report = async (register: string, csv: string, dryRun?: boolean): Promise<Report> =>
  (await send(register, csv, dryRun).expect(200)).body as Report;
const exported = async (register: string): Promise<string> =>
  (await service.as.auditor.get(`/imports/${register}`).expect(200)).text;
const names = async (): Promise<string[]> => {
  const answer = await service.as.auditor.get('/items?limit=200').expect(200);
  return (answer.body as { items: { name: string }[] }).items.map((item) => item.name);
};

const INGREDIENTS = [
  'name;unit;perishable;replacement_price;generic_composition',
  'Cream 35;g;yes;4.20;cream-35',
  'Dark 64;g;no;12.00;dark-chocolate-60-69',
  '',
].join('\r\n');

describe('ingredients', () => {
  it('are told of in a dry run, and nothing is written', async () => {
    const found = await report('ingredients', INGREDIENTS);
    expect(found).toMatchObject({ created: 2, problems: [], written: false });
    expect(await names()).toEqual([]);
  });

  it('list every problem by line and column, all at once', async () => {
    const csv = [
      'name,unit,perishable,replacement_price,gtin,generic_composition',
      'Cream,kg,perhaps,"4,20",,',
      ',g,yes,1.00,123,',
      'Cream,g,no,2.00,,no-such-row',
      'Short line',
    ].join('\n');
    const { problems } = await report('ingredients', csv);
    const at = (line: number): string[] =>
      problems.filter((row) => row.line === line).map((row) => row.column ?? 'line');
    expect(at(2)).toEqual(['unit', 'perishable', 'replacement_price']);
    expect(at(3)).toEqual(['name', 'gtin']);
    expect(at(4)).toEqual(['generic_composition', 'name']);
    expect(at(5)).toEqual(['line']);
    expect(problems.find((row) => row.column === 'replacement_price')?.message).toContain('point');
  });

  it('write nothing while one line is wrong', async () => {
    const csv = `${INGREDIENTS}Milk 38;stone;no;11.00;milk-chocolate\r\n`;
    const answer = await send('ingredients', csv, false);
    expect(answer.status).toBe(422);
    expect(answer.body).toMatchObject({
      type: '/problems/import-not-clean',
      errors: [{ pointer: '/lines/4/unit' }],
    });
    expect(await names()).toEqual([]);
  });

  it('are written when the file is clean, and changed by the next', async () => {
    const first = await report('ingredients', INGREDIENTS, false);
    expect(first).toMatchObject({ created: 2, written: true });
    const csv = 'name,replacement_price\nCream 35,4.40\n';
    expect(await report('ingredients', csv, false)).toMatchObject({ created: 0, changed: 1 });
    const text = await exported('ingredients');
    expect(text).toContain('Cream 35,ingredient,g,,yes,yes,no,no,,4.4000,cream-35,');
  });

  it('come out in the columns that go in', async () => {
    const found = await report('ingredients', await exported('ingredients'));
    expect(found).toMatchObject({ created: 0, changed: 2, problems: [] });
  });

  it('refuse a header that names no column of theirs', async () => {
    const { problems } = await report('ingredients', 'title,colour\nCream,white\n');
    expect(problems.map((row) => row.column)).toEqual(['title', 'colour', 'name']);
  });

  it.each(['', '"unclosed', '\u0000', 'name\n"a"b\n'])('never fall over on %j', async (csv) => {
    const answer = await send('ingredients', csv);
    expect(answer.status).toBeLessThan(500);
  });

  it('keep what a spreadsheet would run as a formula harmless, and read it back', async () => {
    await report('ingredients', 'name,note\nSalt,"=1+1"\n', false);
    const text = await exported('ingredients');
    expect(text).toContain("'=1+1");
    await report('ingredients', text, false);
    expect(await exported('ingredients')).toBe(text);
  });
});

const SHEET = [
  'item,supplier,document,name_fr,contains,absent,water,milkfat,lactose,protein,ash,salt',
  'Cream 35,Valley Dairy Invented,Sheet 4,crème,milk,all_others,58.9,35,3.1,2.2,0.42,0.08',
].join('\n');

describe('specifications', () => {
  it('become drafts that a person approves', async () => {
    expect(await report('specifications', SHEET, false)).toMatchObject({ created: 1 });
    const items = await service.as.auditor.get('/items?name=Cream').expect(200);
    const [cream] = (items.body as { items: { id: string }[] }).items;
    const list = await service.as.auditor.get(`/items/${cream?.id ?? ''}/specifications`);
    expect(list.body).toMatchObject([
      { state: 'draft', allergens: { milk: 'contains', egg: 'absent' } },
    ]);
  });

  it('leave unknown what nobody stated', async () => {
    const csv = 'item,supplier,contains\nDark 64,Valley Dairy Invented,soy\n';
    await report('specifications', csv, false);
    const text = await exported('specifications');
    const line = text.split('\r\n').find((row) => row.startsWith('Dark 64')) ?? '';
    expect(line.startsWith('Dark 64,Valley Dairy Invented,,Dark 64,,soy,,,')).toBe(true);
  });

  it('name a composition that does not come to 100 g, and an item that isn’t there', async () => {
    const csv = [
      'item,supplier,contains,water,milkfat',
      'Cream 35,Valley Dairy Invented,milk,40,35',
      'Moon cheese,Nobody,milk,60,40',
    ].join('\n');
    const { problems } = await report('specifications', csv);
    expect(problems.find((row) => row.line === 2)?.message).toContain('100 g');
    expect(problems.filter((row) => row.line === 3).map((row) => row.column)).toEqual(
      expect.arrayContaining(['item', 'supplier']),
    );
  });

  it('read the strength of a spirit by volume, and refuse it twice', async () => {
    await addItem(service, { name: 'Cane spirit', kind: 'ingredient' });
    const header = 'item,supplier,absent,water,alcohol,alcohol_percent_vol\n';
    const row = 'Cane spirit,Valley Dairy Invented,all_others,66.7,';
    await report('specifications', `${header}${row},40\n`, false);
    expect(await exported('specifications')).toContain('33.3');
    const twice = await report('specifications', `${header}${row}33.3,40\n`);
    expect(twice.problems.map((found) => found.column)).toEqual(['alcohol_percent_vol']);
  });

  it('come out in the columns that go in', async () => {
    expect((await report('specifications', await exported('specifications'))).problems).toEqual([]);
  });
});

describe('price lists', () => {
  beforeAll(async () => {
    await addItem(service, { name: 'Box of nine', kind: 'box' });
  });

  it('set prices from a day on, once', async () => {
    const csv = 'item,list,price,from_day\nBox of nine,counter,14.50,2026-12-01\n';
    expect(await report('price-lists', csv, false)).toMatchObject({ created: 1, written: true });
    expect(await report('price-lists', csv)).toMatchObject({ created: 0, unchanged: 1 });
    expect(await exported('price-lists')).toContain('Box of nine,counter,14.5000,2026-12-01,');
  });

  it('refuse what isn’t sold, a list that there isn’t, and a day of no calendar', async () => {
    const csv = [
      'item,list,price,from_day',
      'Cream 35,counter,1.00,2026-12-01',
      'Box of nine,friends,1.00,2026-12-01',
      'Box of nine,trade,1.00,2026-02-30',
    ].join('\n');
    const { problems } = await report('price-lists', csv);
    expect([...new Set(problems.map((row) => row.line))]).toEqual([2, 3, 4]);
  });
});

describe('who may', () => {
  it('imports is a maker, not a seller; the auditor reads', async () => {
    const answer = await service.as.seller.post('/imports/ingredients', { csv: INGREDIENTS });
    expect(answer.status).toBe(403);
    await service.as.auditor.get('/imports/nothing').expect(404);
  });
});
