import { createHash } from 'node:crypto';
import { Client as PgClient } from 'pg';
import { allText, readPdf } from '../../support/papers/read-pdf';
import { startTestService, type TestService } from '../../support/service/test-service';
import {
  addIngredient,
  HAZELNUTS,
  make,
  openLabelKitchen,
  specifyAnew,
  type LabelKitchen,
} from '../../support/workshop/label-kitchen';

let service: TestService;
let kitchen: LabelKitchen;
let pieces: string;
let boxes: string;

interface Declared {
  readonly printable: boolean;
  readonly lists: readonly { readonly asDesigned: string; readonly runs: readonly { text: string; emphasis: string }[] }[]; // prettier-ignore
  readonly allergens: readonly string[];
  readonly contacts: readonly { allergen: string; verdict: string; proteinMgPerKg: string }[];
  readonly findings: readonly { code: string; severity: string; detail: string }[];
}

const declaration = async (code: string, query = ''): Promise<Declared> =>
  (await service.as.auditor.get(`/lots/${code}/declaration${query}`).expect(200)).body as Declared;
const listIn = (declared: Declared): string =>
  (declared.lists[0]?.runs ?? [])
    .map((run) => (run.emphasis === 'allergen' ? `**${run.text}**` : run.text))
    .join('');
const open = (declared: Declared): string[] =>
  declared.findings
    .filter(({ severity }) => severity === 'refusal' || severity === 'decision')
    .map(({ code }) => code);

const settingsOf = async (itemId: string) =>
  (await service.as.maker.get(`/items/${itemId}/label-settings`).expect(200)).body as {
    version: number;
    usual: boolean;
    nutrition: object;
  };
const label = async (itemId: string, change: object) => {
  const { version, ...settings } = await settingsOf(itemId);
  Reflect.deleteProperty(settings, 'usual');
  const nutrition = { ...settings.nutrition, smallLocalMaker: true };
  return service.as.maker.put(`/items/${itemId}/label-settings`, version, {
    ...settings,
    nutrition,
    ...change,
  });
};

const print = (code: string, more: object = {}) =>
  service.as.seller.post(`/lots/${code}/label-runs`, { form: 'box_label', copies: 2, ...more });
const pdf = async (path: string): Promise<Buffer> =>
  (await service.as.seller.get(path).buffer(true).expect(200)).body as Buffer;

const cookGanache = async (extra: { lotCode: string; quantity: string }[] = []) => {
  const { receive } = kitchen;
  const dark = await receive(kitchen.dark, '5000', { bestBefore: '2027-11-01' });
  const draws = [
    { lotCode: await receive(kitchen.cream, '1000', { useBy: '2026-12-20' }), quantity: '400' },
    { lotCode: dark, quantity: '450' },
    {
      lotCode: await receive(kitchen.hazelnuts, '500', { bestBefore: '2027-06-01' }),
      quantity: '150',
    },
    ...extra.map((draw) => ({ ...draw, role: 'base', reason: 'instead of hazelnuts' })),
  ];
  const more = extra.reduce((sum, { quantity }) => sum + Number(quantity), 0);
  const ganache = await make(service, kitchen.ganache, draws, {
    outputs: [{ quantity: String(980 + more) }],
    losses: [{ kind: 'steam', massGrams: '20' }],
  });
  return { dark, ganache };
};

const castAndPack = async (dark: string, ganache: string) => {
  const cast = await make(
    service,
    kitchen.piece,
    [
      { lotCode: dark, quantity: '120', role: 'shell' },
      { lotCode: ganache, quantity: '100', role: 'filling' },
    ],
    { outputs: [{ quantity: '20', massGrams: '220' }] },
  );
  const packed = await make(service, kitchen.box, [{ lotCode: cast, quantity: '16' }], {
    outputs: [{ quantity: '4' }],
  });
  return { cast, packed };
};

beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-25T09:00:00Z'));
  const workshop = await service.as.owner.get('/workshop').expect(200);
  const { version } = workshop.body as { version: number };
  const addressLines = ['1 Example Lane', '1000 Nowhere'];
  await service.as.owner.patch('/workshop', version, { addressLines }).expect(200);
  kitchen = await openLabelKitchen(service);
  const { dark, ganache } = await cookGanache();
  const { cast, packed } = await castAndPack(dark, ganache);
  pieces = cast;
  boxes = packed;
}, 60_000);
afterAll(() => service.close());

describe('the declaration of a box', () => {
  it('is read off what is really inside, by weight and with its species', async () => {
    const declared = await declaration(boxes);
    expect(listIn(declared)).toBe(
      'dark chocolate (cocoa mass, sugar, cocoa butter, emulsifier: **soya** lecithins), ' +
        'cream (**milk**), **hazelnuts**',
    );
    expect([...declared.allergens].sort()).toEqual(['hazelnut', 'milk', 'soy']);
    expect(declared.lists[0]?.asDesigned).toBe(listIn(declared).replaceAll('**', ''));
  });

  it('says what is missing before it can be printed', async () => {
    expect(open(await declaration(boxes))).toEqual(
      expect.arrayContaining(['name-missing', 'nutrition-incomplete']),
    );
    const refused = await print(boxes);
    expect(refused.status).toBe(409);
    expect(refused.body).toMatchObject({ type: '/problems/label-kept-back' });
  });

  it('speaks another market’s rules on demand', async () => {
    const american = await declaration(boxes, '?market=US&languages=en');
    expect(listIn(american)).toContain('soy lecithin');
    expect(listIn(american)).not.toContain('**');
    await service.as.auditor.get(`/lots/${boxes}/declaration?languages=xx`).expect(400);
    await service.as.auditor.get('/lots/no-such-lot/declaration').expect(404);
  });

  it('refuses settings that can’t stand on a label, naming the field', async () => {
    const wrong = await label(kitchen.box, { names: { en: 'Su\u202egar' } });
    expect(wrong.status).toBe(400);
    expect(wrong.body).toMatchObject({ errors: [{ pointer: '/names/en' }] });
  });
});

describe('a label run', () => {
  it('prints what was declared, and reprints it byte for byte after every change', async () => {
    const named = { names: { en: 'Hazelnut ganache chocolates' }, legalName: 'praline' };
    expect((await label(kitchen.box, named)).status).toBe(200);
    expect(open(await declaration(boxes, '?languages=en'))).toEqual([]);
    const run = await print(boxes, { languages: ['en'], price: '6.90' });
    expect(run.status).toBe(201);
    const { id, pdfSha256 } = run.body as { id: string; pdfSha256: string };
    const first = await pdf(`/lots/${boxes}/label.pdf`);
    expect(createHash('sha256').update(first).digest('hex')).toBe(pdfSha256);
    const text = allText(readPdf(first, 'box-label'));
    for (const expected of [
      'Hazelnut ganache chocolates',
      'Ingredients: dark chocolate (cocoa mass, sugar, cocoa butter, emulsifier: soya lecithins)',
      '44 g',
      'Best before',
      `L${boxes}`,
      '156.82',
    ]) {
      expect(text).toContain(expected);
    }
    await label(kitchen.box, { names: { en: 'Renamed' }, legalName: 'praline' });
    const again = await pdf(`/lots/${boxes}/label-runs/${id}/label.pdf`);
    expect(again.equals(first)).toBe(true);
    await label(kitchen.box, named);
  });

  it('is looked at before it is printed: the preview is the very PDF, and keeps nothing', async () => {
    const wishes = { form: 'box_label', copies: 3, languages: ['en'], price: '7.50' };
    const runs = async (): Promise<number> =>
      ((await service.as.auditor.get(`/lots/${boxes}/label-runs`).expect(200)).body as []).length;
    const before = await runs();
    const seen = await service.as.seller
      .post(`/lots/${boxes}/label-previews`, wishes)
      .buffer(true)
      .expect(200)
      .expect('content-type', 'application/pdf');
    expect(await runs()).toBe(before);
    service.clock.setTo(new Date('2026-11-25T08:12:00Z'));
    const run = await print(boxes, wishes).expect(201);
    service.clock.setTo(new Date('2026-11-25T09:00:00Z'));
    const sha256 = createHash('sha256')
      .update(seen.body as Buffer)
      .digest('hex');
    expect((run.body as { pdfSha256: string }).pdfSha256).toBe(sha256);
  });

  it('is refused in the preview for what keeps it back in print', async () => {
    const refused = await service.as.seller.post(`/lots/${boxes}/label-previews`, {
      form: 'box_label',
      copies: 1,
      languages: ['fr'],
    });
    expect(refused.status).toBe(409);
    expect(refused.body).toMatchObject({ type: '/problems/label-kept-back' });
  });

  it('is never changed or deleted', async () => {
    const client = new PgClient({ connectionString: service.databaseUrl });
    await client.connect();
    for (const table of ['label_run', 'contact_decision', 'quantity_check']) {
      await expect(client.query(`TRUNCATE ${table}`)).rejects.toThrow('append-only');
    }
    await expect(client.query('UPDATE label_run SET copies = 9')).rejects.toThrow('append-only');
    await client.end();
  });

  it('happens once when it is sent twice', async () => {
    const key = 'one-key-for-two-requests';
    const body = { form: 'box_label', copies: 1, languages: ['en'] };
    const [one, two] = [
      await service.as.seller.post(`/lots/${boxes}/label-runs`, body, key),
      await service.as.seller.post(`/lots/${boxes}/label-runs`, body, key),
    ];
    expect(two.body).toEqual(one.body);
    const runs = await service.as.auditor.get(`/lots/${boxes}/label-runs`).expect(200);
    const { id } = one.body as { id: string };
    expect((runs.body as { id: string }[]).filter((run) => run.id === id)).toHaveLength(1);
  });

  it('says so when a label does not fit its stock, and refuses a seller’s auditor', async () => {
    const stock = { kind: 'die_cut', widthMm: 30, heightMm: 20, marginMm: 1 };
    const refused = await print(boxes, { languages: ['en'], stock });
    expect(refused.status).toBe(422);
    expect(refused.body).toMatchObject({ type: '/problems/label-does-not-fit' });
    await service.as.auditor.post(`/lots/${boxes}/label-runs`, {}).expect(403);
  });

  it('prints the direct-sale label and the legend card of the box', async () => {
    await print(boxes, { form: 'direct_sale_label', languages: ['en'] }).expect(201);
    const direct = allText(readPdf(await pdf(`/lots/${boxes}/label.pdf`), 'direct-sale'));
    expect(direct).toContain('soya lecithins');
    expect(direct).not.toContain('44 g');
    await print(boxes, { form: 'legend_card', languages: ['en'] }).expect(201);
    const card = allText(readPdf(await pdf(`/lots/${boxes}/label.pdf`), 'legend-card'));
    expect(card).toContain('Hazelnut dome');
    expect(card).toMatch(/contains .*soya, milk, hazelnut/);
  });
});

describe('what differs or is not known', () => {
  it('another allergen than the recipe’s waits for a person and is recorded, each by itself', async () => {
    const another = async (name: string, allergen: string): Promise<string> => {
      const nut = { ...HAZELNUTS, ingredient: { names: { en: name }, origins: [{ allergen }] }, allergens: { [allergen]: 'contains' } }; // prettier-ignore
      const itemId = await addIngredient(service, kitchen.supplierId, name, nut);
      return kitchen.receive(itemId, '100', { bestBefore: '2027-06-01' });
    };
    const { dark, ganache } = await cookGanache([
      { lotCode: await another('almonds', 'almond'), quantity: '30' },
      { lotCode: await another('cashews', 'cashew'), quantity: '30' },
    ]);
    const { packed } = await castAndPack(dark, ganache);
    const declared = await declaration(packed, '?languages=en');
    expect(listIn(declared)).toContain('**almonds**');
    expect(open(declared)).toEqual(['differs-allergen', 'differs-allergen']);
    await print(packed, { languages: ['en'] }).expect(409);
    const accept = (subject?: string) => ({
      code: 'differs-allergen',
      reason: 'hazelnuts ran out',
      ...(subject === undefined ? {} : { subject }),
    });
    for (const accepted of [[accept()], [accept('almond')], [accept('cashew'), accept('milk')]]) {
      const refused = await print(packed, { languages: ['en'], accepted });
      expect(refused.status).toBe(409);
    }
    const both = [accept('almond'), accept('cashew')];
    const run = await print(packed, { languages: ['en'], accepted: [...both, accept('milk')] });
    expect(run.status).toBe(201);
    expect(run.body).toMatchObject({ accepted: both });
  });

  it('an allergen on which one supplier is silent keeps the label back', async () => {
    await specifyAnew(service, kitchen.supplierId, kitchen.hazelnuts, {
      ...HAZELNUTS,
      allergens: { hazelnut: 'contains', peanut: undefined },
    });
    const { dark, ganache } = await cookGanache();
    const { packed } = await castAndPack(dark, ganache);
    expect(open(await declaration(packed, '?languages=en'))).toContain('allergen-unknown');
    const refused = await print(packed, { languages: ['en'] });
    expect(refused.status).toBe(409);
    expect((refused.body as { detail: string }).detail).toContain('peanut');
  });
});

describe('cross-contact', () => {
  it('is computed with its numbers and decided by a named person', async () => {
    const sugar = await addIngredient(service, kitchen.supplierId, 'Paste', {
      ingredient: { names: { en: 'sesame-free paste' } },
      allergens: { sesame: 'may_contain' },
      statements: { crossContactProteinMgPerKg: { sesame: '100' } },
    });
    const loose = await kitchen.receive(sugar, '100', { bestBefore: '2027-06-01' });
    await label(sugar, { names: { en: 'Paste' }, netGrams: '100', sittingGrams: '50' });
    const declared = await declaration(loose, '?languages=en');
    expect(declared.contacts).toMatchObject([
      { allergen: 'sesame', verdict: 'above', proteinMgPerKg: '100.000', actionLevelMgPerKg: '40.000' }, // prettier-ignore
    ]);
    expect(open(declared)).toEqual(['contact-undecided']);
    const decide = (decision: string) =>
      service.as.maker.post(`/lots/${loose}/contact-decisions`, {
        allergen: 'sesame',
        decision,
        reason: 'shared mill',
      });
    expect((await decide('leave_out')).body).toMatchObject({ type: '/problems/contact-not-open' });
    const stated = await decide('state').expect(201);
    expect(stated.body).toMatchObject({ decidedBy: 'The maker', assessment: { verdict: 'above' } });
    expect(open(await declaration(loose, '?languages=en'))).toEqual([]);
    await print(loose, { languages: ['en'] }).expect(201);
    const text = allText(readPdf(await pdf(`/lots/${loose}/label.pdf`), 'precaution'));
    expect(text).toContain('May contain sesame.');
  });
});

describe('weighed packs and the counter', () => {
  it('earn the e-mark when the batch is accepted', async () => {
    const weigh = (weights: string[]) =>
      service.as.seller.post(`/lots/${boxes}/quantity-checks`, {
        nominalGrams: '44',
        batchSize: 4,
        destructive: false,
        netWeightsGrams: weights,
      });
    expect((await weigh(['43', '44', '44', '44']).expect(201)).body).toMatchObject({
      state: 'rejected',
      toleratedErrorGrams: '4.000',
      meanGrams: '43.750',
    });
    await weigh(['44', 'x']).expect(400);
    await weigh(['44.1', '44', '44.2', '44']).expect(201);
    await label(kitchen.box, {
      names: { en: 'Hazelnut ganache chocolates' },
      legalName: 'praline',
      eMark: true,
    });
    await print(boxes, { languages: ['en'] }).expect(201);
    const text = allText(readPdf(await pdf(`/lots/${boxes}/label.pdf`), 'e-mark'));
    expect(text).toContain('℮');
  });

  it('shows the loose pieces of today against allergens, unknown where a lot is', async () => {
    const matrix = readPdf(await pdf('/reports/allergens.pdf?language=en'), 'matrix');
    const text = allText(matrix);
    expect(text).toContain('Hazelnut dome');
    expect(text).toContain('unknown: don’t serve');
    expect(pieces).not.toBe('');
  });
});
