import { randomUUID } from 'node:crypto';
import { specify } from '../../prisma/demo/specify';
import { allText, readPdf } from '../support/papers/read-pdf';
import { type Client, startTestService, type TestService } from '../support/service/test-service';

/**
 * One working day over HTTP alone, on a fresh database, wrong turns included: goods in, filling,
 * cast pieces, packed boxes, label, dispatch, price, complaint, recall. Each part goes on where the
 * one before ended. All names are invented.
 */
let service: TestService;
let maker: Client;
let seller: Client;
let owner: Client;

type Json = Record<string, unknown>;
const ids: Record<string, string> = {};
const lots: Record<string, string> = {};

beforeAll(async () => {
  service = await startTestService();
  ({ maker, seller, owner } = service.as);
});
afterAll(() => service.close());

const made = async (client: Client, path: string, body: object): Promise<Json> => {
  const answer = await client.post(path, body);
  if (answer.status >= 300) throw new Error(`${path}: ${JSON.stringify(answer.body)}`);
  return answer.body as Json;
};

const refusal = async (client: Client, path: string, body: object): Promise<Json> => {
  const answer = await client.post(path, body);
  expect(answer.headers['content-type']).toContain('application/problem+json');
  expect((answer.body as Json)['status']).toBe(answer.status);
  expect(String((answer.body as Json)['detail']).length).toBeGreaterThan(20);
  return answer.body as Json;
};

const onHand = async (code: string): Promise<string> =>
  ((await maker.get(`/lots/${code}`).expect(200)).body as Json)['onHandQuantity'] as string;

const pdf = async (path: string): Promise<Buffer> =>
  (await seller.get(path).buffer(true).expect(200)).body as Buffer;

const line = (name: string, quantity: string, more: object = {}): object => ({
  itemId: ids[name],
  supplierLotCode: `${name}-7`,
  quantity,
  price: '25.0000',
  bestBefore: '2099-01-31',
  ...more,
});

const deliver = async (
  lines: object[],
): Promise<{ lotCode: string; heldBecause: string | null }[]> =>
  (await made(maker, '/deliveries', { supplierId: ids['supplier'], lines }))['lines'] as {
    lotCode: string;
    heldBecause: string | null;
  }[];

const draw = (batch: string, lotCode: string | undefined, quantity: string, role?: string) =>
  made(maker, `/batches/${batch}/draws`, { lotCode, quantity, ...(role ? { role } : {}) });

describe('before the first day', () => {
  it('sets up the workshop, its people’s wages, a supplier and a customer', async () => {
    const { version } = (await owner.get('/workshop').expect(200)).body as { version: number };
    const workshop = {
      name: 'Ostrel Test Kitchen',
      addressLines: ['1 Weir Street', '0000 Ostrel'],
      market: 'EU',
      languages: ['en'],
    };
    await owner.patch('/workshop', version, workshop).expect(200);
    await made(owner, '/workshop/labour-rates', {
      role: 'maker',
      ratePerHour: '24.00',
      fromDay: '2020-01-01',
    });
    await made(owner, '/workshop/vat-rates', {
      productClass: 'filled chocolates',
      ratePercent: '6',
      fromDay: '2020-01-01',
    });
    ids['supplier'] = (await made(maker, '/suppliers', { name: 'Weir Valley Goods' }))[
      'id'
    ] as string;
    ids['customer'] = (await made(seller, '/customers', { name: 'Inn at the Lock' }))[
      'id'
    ] as string;
  });

  it('writes what the supplier states, and the owner approves it', async () => {
    const sheets = {
      couverture: {
        en: 'dark chocolate', fr: 'chocolat noir', chocolate: 'couverture' as const,
        composition: 'dark-chocolate-60-69', flags: { definedInUnionLaw: true },
        parts: [
          { en: 'cocoa mass', fr: 'pâte de cacao', percent: 54 },
          { en: 'sugar', fr: 'sucre', percent: 35.6 },
          { en: 'cocoa butter', fr: 'beurre de cacao', percent: 10 },
          { en: 'soya lecithins', fr: 'lécithines de soja', percent: 0.4, from: 'soy' as const, additive: { class: 'emulsifier', e: 'E322' } },
        ],
      },
      cream: { en: 'cream', fr: 'crème', from: 'milk' as const, composition: 'cream-35', proteinPercent: { milk: 2.2 } },
      brittle: {
        en: 'hazelnut brittle', fr: 'nougatine', composition: { water: 1, nutFat: 24, sucrose: 62, protein: 6, fibre: 4, ash: 3 },
        unknown: ['sesame' as const],
        parts: [{ en: 'sugar', fr: 'sucre', percent: 62 }, { en: 'hazelnuts', fr: 'noisettes', percent: 38, from: 'hazelnut' as const }],
      },
    }; // prettier-ignore
    for (const [name, sheet] of Object.entries(sheets)) {
      ids[name] = (await made(maker, '/items', { name, kind: 'ingredient' }))['id'] as string;
      const path = `/items/${ids[name]}/specifications`;
      const draft = await made(maker, path, { supplierId: ids['supplier'], ...specify(sheet) });
      await made(owner, `${path}/${String(draft['id'])}/approve`, {});
    }
    ids['sprinkles'] = (await made(maker, '/items', { name: 'sprinkles', kind: 'ingredient' }))[
      'id'
    ] as string;
    ids['carton'] = (await made(maker, '/items', { name: 'carton', kind: 'packaging' }))[
      'id'
    ] as string;
  });

  it('writes the recipes of a ganache, a piece and a box', async () => {
    const item = async (name: string, kind: string, more: object = {}): Promise<void> => {
      ids[name] = (await made(maker, '/items', { name, kind, ...more }))['id'] as string;
    };
    await item('ganache', 'filling');
    await item('dome', 'piece', { nominalMassGrams: '8.600', vatClass: 'filled chocolates' });
    await item('box', 'box', { nominalMassGrams: '34.000', vatClass: 'filled chocolates' });
    ids['design'] = (await made(maker, '/mould-designs', {
      name: 'Dome', shape: 'hemisphere', rows: 2, columns: 6, cavityVolumeMl: '7.0686', pieceMassGrams: '8.600',
    }))['id'] as string; // prettier-ignore
    const trays = (await made(maker, '/moulds', { designId: ids['design'], count: 2 }))[
      'items'
    ] as {
      tag: string;
    }[];
    lots['mould'] = trays[0]?.tag ?? '';
    ids['tank'] = (await made(maker, '/tanks', {
      name: 'Dark tank', itemId: ids['couverture'], capacityGrams: '5000',
    }))['id'] as string; // prettier-ignore
    const life = {
      shelfLifeDays: 21,
      shelfLifeBasis: 'validated',
      shelfLifeDocument: 'Storage test 4',
    };
    await made(maker, `/items/${ids['ganache']}/recipes`, {
      ...life,
      yieldGrams: '970.000',
      labourMinutes: '30.00',
      labourRole: 'maker',
      lines: [
        { itemId: ids['cream'], quantity: '400', role: 'base' },
        { itemId: ids['couverture'], quantity: '600', role: 'base' },
      ],
    });
    await made(maker, `/items/${ids['dome']}/recipes`, {
      ...life,
      yieldPieces: 12,
      mouldDesignId: ids['design'],
      labourMinutes: '12.00',
      labourRole: 'maker',
      lines: [
        { itemId: ids['couverture'], quantity: '34.320', role: 'shell' },
        { itemId: ids['ganache'], quantity: '56.400', role: 'filling' },
        { itemId: ids['couverture'], quantity: '12.480', role: 'cap' },
      ],
    });
    await made(maker, `/items/${ids['box']}/recipes`, {
      yieldPieces: 1,
      labourMinutes: '2.00',
      labourRole: 'maker',
      lines: [
        { itemId: ids['dome'], quantity: '4', role: 'slot' },
        { itemId: ids['carton'], quantity: '1', role: 'packaging' },
      ],
    });
  });
});

describe('goods in', () => {
  it('makes lots, and holds by itself what is not known well enough', async () => {
    const [couverture, cream, brittle, sprinkles, carton] = await deliver([
      line('couverture', '5000'),
      line('cream', '2000', { bestBefore: undefined, useBy: '2099-01-31' }),
      line('brittle', '1000'),
      line('sprinkles', '500'),
      line('carton', '100', { bestBefore: undefined }),
    ]);
    lots['couverture'] = couverture?.lotCode ?? '';
    lots['cream'] = cream?.lotCode ?? '';
    lots['brittle'] = brittle?.lotCode ?? '';
    lots['sprinkles'] = sprinkles?.lotCode ?? '';
    lots['carton'] = carton?.lotCode ?? '';
    expect(couverture?.heldBecause).toBeNull();
    expect(brittle?.heldBecause).toContain('sesame');
    expect(sprinkles?.heldBecause).toContain('no approved specification');
  });

  it('refuses the wrong role, goods past their use-by, and a repeated request twice over', async () => {
    const delivery = { supplierId: ids['supplier'], lines: [line('couverture', '1000')] };
    expect(await refusal(seller, '/deliveries', delivery)).toMatchObject({ status: 403 });
    const old = { ...delivery, lines: [line('cream', '1000', { useBy: '2020-01-01' })] };
    expect(await refusal(maker, '/deliveries', old)).toMatchObject({
      type: '/problems/goods-past-use-by',
      status: 422,
    });
    const key = randomUUID();
    const first = await maker.post('/deliveries', delivery, key).expect(201);
    const again = await maker.post('/deliveries', delivery, key).expect(201);
    expect(again.body).toEqual(first.body);
    const page = (await maker.get(`/lots?item=${ids['couverture'] ?? ''}`)).body as {
      items: unknown[];
    };
    expect(page.items).toHaveLength(2);
  });

  it('prints a tag whose code scans back to the lot', async () => {
    const tag = readPdf(await pdf(`/lots/${lots['cream'] ?? ''}/tag.pdf`), 'day-tag', [203]);
    expect(allText(tag)).toContain(lots['cream']);
    const scanned = tag.symbols[0]?.text ?? '';
    expect(scanned).toContain(lots['cream']);
    const found = await maker.get(`/scan?text=${encodeURIComponent(scanned)}`).expect(200);
    expect(JSON.stringify(found.body)).toContain(lots['cream']);
  });
});

describe('the filling', () => {
  it('takes only what may be used and what is there', async () => {
    const batch = await made(maker, '/batches', { itemId: ids['ganache'], plannedQuantity: '970' });
    ids['cook'] = batch['id'] as string;
    const draws = `/batches/${ids['cook']}/draws`;
    const held = { lotCode: lots['brittle'], quantity: '10', role: 'base', reason: 'try it' };
    expect(await refusal(maker, draws, held)).toMatchObject({
      type: '/problems/lot-held',
      status: 409,
      facts: { lotCode: lots['brittle'] },
    });
    const unspecified = { ...held, lotCode: lots['sprinkles'] };
    expect(await refusal(maker, draws, unspecified)).toMatchObject({ status: 409 });
    const tooMuch = { lotCode: lots['cream'], quantity: '2000.001' };
    expect(await refusal(maker, draws, tooMuch)).toMatchObject({
      type: '/problems/not-enough-on-hand',
      status: 409,
    });
    expect(await onHand(lots['cream'] ?? '')).toBe('2000.000');
  });

  it('balances to the milligram or is not finished', async () => {
    const batch = ids['cook'] ?? '';
    await draw(batch, lots['cream'], '400');
    await draw(batch, lots['couverture'], '600');
    const finish = `/batches/${batch}/finish`;
    const losses = [{ kind: 'steam', massGrams: '12.000' }];
    const short = await refusal(maker, finish, { outputs: [{ quantity: '970' }], losses });
    expect(short['status']).toBe(422);
    const whole = {
      outputs: [{ quantity: '970' }],
      losses: [...losses, { kind: 'scrapings', massGrams: '18.000' }],
      labourMinutes: '32.00',
    };
    const finished = await made(maker, finish, whole);
    const [output] = finished['outputs'] as { code?: string; lotCode?: string }[];
    lots['ganache'] = output?.code ?? output?.lotCode ?? '';
    expect(await onHand(lots['ganache'])).toBe('970.000');
    expect(await onHand(lots['cream'] ?? '')).toBe('1600.000');
  });
});

describe('casting and packing', () => {
  it('casts two trays from the tank, counts rejects, and refuses a chipped mould', async () => {
    await made(maker, `/tanks/${ids['tank'] ?? ''}/charges`, {
      lots: [{ lotCode: lots['couverture'], quantity: '2000' }],
    });
    const batch = (await made(maker, '/batches', { itemId: ids['dome'], plannedTrays: 1 }))[
      'id'
    ] as string;
    await made(maker, `/moulds/${lots['mould'] ?? ''}/inspections`, { result: 'chipped' });
    const use = { mouldTag: lots['mould'], cavitiesFilled: 12, rejectCavities: [3] };
    expect(await refusal(maker, `/batches/${batch}/mould-uses`, use)).toMatchObject({
      status: 409,
    });
    await made(maker, `/moulds/${lots['mould'] ?? ''}/inspections`, { result: 'sound' });
    await made(maker, `/batches/${batch}/mould-uses`, use);
    const tank = { tankId: ids['tank'] };
    await made(maker, `/batches/${batch}/draws`, { ...tank, quantity: '34.320', role: 'shell' });
    await draw(batch, lots['ganache'], '56.400', 'filling');
    await made(maker, `/batches/${batch}/draws`, { ...tank, quantity: '12.480', role: 'cap' });
    const finished = await made(maker, `/batches/${batch}/finish`, {
      outputs: [{ quantity: '11' }],
      losses: [{ kind: 'rejects', pieces: 1 }],
      labourMinutes: '14.00',
    });
    const [output] = finished['outputs'] as { code?: string; lotCode?: string }[];
    lots['dome'] = output?.code ?? output?.lotCode ?? '';
    expect(await onHand(lots['dome'])).toBe('11.000');
  });

  it('packs two boxes of four', async () => {
    const batch = (await made(maker, '/batches', { itemId: ids['box'], plannedQuantity: '2' }))[
      'id'
    ] as string;
    await draw(batch, lots['dome'], '8', 'slot');
    await draw(batch, lots['carton'], '2', 'packaging');
    const finished = await made(seller, `/batches/${batch}/finish`, {
      outputs: [{ quantity: '2' }],
    });
    const [output] = finished['outputs'] as { code?: string; lotCode?: string }[];
    lots['box'] = output?.code ?? output?.lotCode ?? '';
    const box = (await maker.get(`/lots/${lots['box']}`)).body as Json;
    expect(box).toMatchObject({ onHandQuantity: '2.000', expired: false });
    expect(box['bestBefore']).not.toBeNull();
  });
});

describe('the label', () => {
  it('is computed from the lots inside, printed, and reprinted byte for byte', async () => {
    const settings = `/items/${ids['box'] ?? ''}/label-settings`;
    const {
      usual: _,
      version,
      ...usual
    } = (await maker.get(settings)).body as {
      usual: boolean;
      version: number;
      nutrition: object;
    };
    await maker
      .put(settings, version, {
        ...usual,
        names: { en: 'Filled dark chocolates' },
        legalName: 'filled_chocolate',
        storage: { en: 'Keep dry at 14 to 18 °C.' },
        nutrition: { ...usual.nutrition, smallLocalMaker: true },
      })
      .expect(200);
    const path = `/lots/${lots['box'] ?? ''}`;
    const declared = (await seller.get(`${path}/declaration`).expect(200)).body as Json;
    expect(declared['allergens']).toEqual(expect.arrayContaining(['milk', 'soy']));
    expect(declared).toMatchObject({ printable: true });
    const run = await made(seller, `${path}/label-runs`, { form: 'box_label', copies: 2 });
    const reprint = `${path}/label-runs/${String(run['id'])}/label.pdf`;
    const first = await pdf(reprint);
    expect((await pdf(reprint)).equals(first)).toBe(true);
    const text = allText(readPdf(first, 'day-label', [203]));
    for (const words of ['Filled dark chocolates', 'cream', 'milk', 'Ostrel Test Kitchen']) {
      expect(text).toContain(words);
    }
    expect(text).toContain(lots['box']);
  });

  it('is refused while an allergen inside is not known, even when the lot was released', async () => {
    const path = `/lots/${lots['brittle'] ?? ''}`;
    const [hold] = ((await owner.get(path)).body as { holds: { id: string }[] }).holds;
    await made(owner, `${path}/holds/${hold?.id ?? ''}/release`, { reason: 'for a trial' });
    const batch = (await made(maker, '/batches', { itemId: ids['ganache'] }))['id'] as string;
    await draw(batch, lots['cream'], '100');
    const trialDraw = { lotCode: lots['brittle'], quantity: '50', role: 'base', reason: 'trial' };
    const allergens = [
      { allergen: 'hazelnut', after: 'contains' },
      { allergen: 'sesame', after: 'unknown' },
    ];
    expect(await refusal(maker, `/batches/${batch}/draws`, trialDraw)).toMatchObject({
      type: '/problems/substitute-not-accepted',
      status: 409,
      facts: { notAccepted: allergens },
    });
    const acceptance = { allergens };
    await made(maker, `/batches/${batch}/draws`, { ...trialDraw, acceptance });
    const finished = await made(maker, `/batches/${batch}/finish`, {
      outputs: [{ quantity: '150' }],
    });
    const [output] = finished['outputs'] as { code?: string; lotCode?: string }[];
    const trial = output?.code ?? output?.lotCode ?? '';
    const declared = (await seller.get(`/lots/${trial}/declaration`).expect(200)).body as Json;
    expect(declared).toMatchObject({ printable: false });
    expect(JSON.stringify(declared['findings'])).toContain('sesame');
    const run = { form: 'box_label', copies: 1 };
    expect(
      (await refusal(seller, `/lots/${trial}/label-runs`, run))['status'],
    ).toBeGreaterThanOrEqual(409);
  });
});

describe('out', () => {
  it('sends a box to a customer and one over the counter, with a note', async () => {
    const sent = await made(seller, '/dispatches', {
      customerId: ids['customer'],
      lines: [{ lotCode: lots['box'], quantity: '1' }],
    });
    const counter = { customerId: null, lines: [{ lotCode: lots['box'], quantity: '1' }] };
    await made(seller, '/dispatches', counter);
    expect(await onHand(lots['box'] ?? '')).toBe('0.000');
    const note = readPdf(await pdf(`/dispatches/${String(sent['id'])}/note.pdf`), 'day-note');
    expect(allText(note)).toContain('Inn at the Lock');
  });

  it('refuses to sell more than there is, and to use what is past its use-by', async () => {
    const one = { customerId: null, lines: [{ lotCode: lots['box'], quantity: '1' }] };
    const nobody = await refusal(seller, '/dispatches', { lines: one.lines });
    expect(nobody).toMatchObject({ errors: [{ pointer: '/customerId' }] });
    expect(await refusal(seller, '/dispatches', one)).toMatchObject({ status: 409 });
    const tomorrow = new Date(Date.now() + 86_400_000).toISOString().slice(0, 10);
    const [short] = await deliver([
      line('cream', '500', { bestBefore: undefined, useBy: tomorrow }),
    ]);
    const batch = (await made(maker, '/batches', { itemId: ids['ganache'] }))['id'] as string;
    const late = { lotCode: short?.lotCode, quantity: '100' };
    try {
      service.clock.setTo(new Date(Date.now() + 3 * 86_400_000));
      expect(await refusal(maker, `/batches/${batch}/draws`, late)).toMatchObject({
        type: '/problems/lot-expired',
        facts: { lotCode: short?.lotCode, useBy: tomorrow },
      });
    } finally {
      service.clock.setTo(undefined);
    }
  });

  it('prices the box from real lots, packaging, minutes and overhead', async () => {
    const cost = (await owner.get(`/lots/${lots['box'] ?? ''}/cost`).expect(200)).body as {
      lotCost: string;
      cost: string;
      waterfall: { amount: string }[];
    };
    // Two boxes: half of what the lot cost is the cost of one.
    expect(Number(cost.cost) * 2).toBeCloseTo(Number(cost.lotCost), 1);
    const steps = cost.waterfall.reduce((sum, step) => sum + Number(step.amount), 0);
    expect(steps).toBeCloseTo(Number(cost.cost), 1);
    const priced = await owner.post(`/items/${ids['box'] ?? ''}/prices`, {
      list: 'counter',
      price: '10.60',
      fromDay: '2020-01-01',
    });
    expect(priced.status).toBe(201);
    const price = (await owner.get(`/items/${ids['box'] ?? ''}/price`).expect(200)).body as Json;
    // 10.60 at 6 % VAT: 10.00 net and 0.60 VAT.
    expect(JSON.stringify(price)).toMatch(/"10\.00/);
    expect(JSON.stringify(price)).toMatch(/"0\.60/);
  });
});

describe('a complaint', () => {
  it('is found by a smudged code and traced back to the supplier’s lot', async () => {
    const smudged = (lots['box'] ?? '').replace('0', 'O');
    const complaint = await made(seller, '/complaints', {
      codeAsRead: smudged, kind: 'foreign_body', what: 'something hard', receivedOn: '2026-11-25',
    }); // prettier-ignore
    expect(complaint).toMatchObject({ lotCode: null });
    const search = `/complaints/code-search?text=${encodeURIComponent(smudged)}`;
    const [match] = (await seller.get(search).expect(200)).body as { lotCode: string }[];
    expect(match?.lotCode).toBe(lots['box']);
    const trace = await owner.get(`/lots/${lots['box'] ?? ''}/trace?direction=back`).expect(200);
    for (const behind of ['cream', 'couverture', 'ganache', 'dome', 'carton']) {
      expect(JSON.stringify(trace.body)).toContain(lots[behind]);
    }
    const provenance = await owner.get(`/lots/${lots['box'] ?? ''}/provenance`).expect(200);
    expect(JSON.stringify(provenance.body)).toContain('cream-7');
    const report = readPdf(await pdf(`/lots/${lots['box'] ?? ''}/trace.pdf`), 'day-trace');
    expect(allText(report)).toContain(lots['cream']);
  });

  it('accounts for every gram of the cream', async () => {
    const answer = await owner.get(`/lots/${lots['cream'] ?? ''}/balance`).expect(200);
    const balance = answer.body as Json;
    expect(balance).toMatchObject({
      sourceQuantity: '2000.000',
      unexplainedQuantity: '0.000',
      accountedPercent: '100.00',
      overdrawn: [],
    });
  });
});

describe('the recall', () => {
  it('opens from the cream, is reviewed, frozen, held, listed, recovered and closed', async () => {
    const opened = await made(owner, '/recalls', {
      mode: 'real',
      reason: 'The dairy warns of this lot',
      starts: [{ kind: 'lot', text: lots['cream'] }],
    });
    const path = `/recalls/${String(opened['code'])}`;
    const frozen = await made(owner, `${path}/freeze`, {});
    for (const ahead of ['ganache', 'dome', 'box']) {
      expect(JSON.stringify(frozen)).toContain(lots[ahead]);
    }
    await made(owner, `${path}/holds`, {});
    const ganache = (await maker.get(`/lots/${lots['ganache'] ?? ''}`)).body as Json;
    expect(ganache).toMatchObject({ onHold: true });
    const csv = (await owner.get(`${path}/list.csv`).expect(200)).text;
    expect(csv).toContain('Inn at the Lock');
    expect(csv).toContain(lots['box']);
    await made(owner, `${path}/recoveries`, {
      lines: [
        { lot: lots['box'], customerId: ids['customer'], quantity: '1', outcome: 'returned' },
      ],
    });
    expect(await onHand(lots['box'] ?? '')).toBe('1.000');
    const resold = { customerId: null, lines: [{ lotCode: lots['box'], quantity: '1' }] };
    expect(await refusal(seller, '/dispatches', resold)).toMatchObject({
      type: '/problems/lot-held',
    });
    const closed = await made(owner, `${path}/close`, {
      conclusion: 'One box back, one sold unnamed.',
    });
    expect(closed).toMatchObject({ state: 'closed' });
  });

  it('hands the whole day over as EPCIS events', async () => {
    const events = await owner.get('/exports/events').buffer(true).expect(200);
    const document = JSON.parse(events.text) as {
      epcisBody: { eventList: { type: string; bizStep: string }[] };
    };
    const steps = new Set(document.epcisBody.eventList.map((event) => event.bizStep));
    expect([...steps]).toEqual(expect.arrayContaining(['receiving', 'shipping']));
  });
});
