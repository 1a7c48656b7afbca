import { accepted } from '../../support/workshop/accepted';
import { allText, readPdf } from '../../support/papers/read-pdf';
import { startTestService, type TestService } from '../../support/service/test-service';
import {
  addIngredient,
  openLabelKitchen,
  type LabelKitchen,
  type Sheet,
} from '../../support/workshop/label-kitchen';

/** One kitchen's goods under several markets, in several languages, on several stocks. */

let service: TestService;
let kitchen: LabelKitchen;
let bar: string;
let barItem: string;
let fruits: { readonly raspberries: string; readonly currants: string };

const names = (en: string, fr: string, de: string) => ({ en, fr, de });

const NUTRITION = {
  fat: '36', saturates: '22', monounsaturates: '11', polyunsaturates: '1', transFat: '0',
  carbohydrate: '46', sugars: '42', addedSugars: '40', starch: '2', fibre: '9', protein: '6',
  salt: '0.02', cholesterolMg: '1', sodiumMg: '8', vitaminDMcg: '0', calciumMg: '55', ironMg: '9',
  potassiumMg: '560',
}; // prettier-ignore

const BAR: Sheet = {
  ingredient: {
    names: names('dark chocolate', 'chocolat noir', 'dunkle Schokolade'),
    parts: [
      { names: names('cocoa mass', 'pâte de cacao', 'Kakaomasse'), percent: '55' },
      { names: names('sugar', 'sucre', 'Zucker'), percent: '40', flags: { sugar: true } },
      { names: names('cocoa butter', 'beurre de cacao', 'Kakaobutter'), percent: '4.5' },
      {
        names: names('soya lecithins', 'lécithines de soja', 'Sojalecithine'),
        usName: 'soy lecithin',
        percent: '0.5',
        additive: { functionalClass: 'emulsifier', eNumber: 'E322' },
        origins: [{ allergen: 'soy' }],
      },
    ],
  },
  allergens: { soy: 'contains' },
  statements: { chocolateKind: 'chocolate' },
  composition: {
    water: '1', fat: { cocoaButter: '36' }, sugars: { sucrose: '40' }, protein: '6', fibre: '9',
    ash: '2', other: '6', cocoaSolids: { cocoaButter: '36', fatFreeCocoa: '23' },
  },
  nutrition: NUTRITION,
}; // prettier-ignore

const setUp = async (itemId: string, change: object, nutrition: object = {}) => {
  const seen = await service.as.maker.get(`/items/${itemId}/label-settings`).expect(200);
  const { version, ...settings } = seen.body as { version: number; nutrition: object };
  Reflect.deleteProperty(settings, 'usual');
  const body = { ...settings, ...change, nutrition: { ...settings.nutrition, ...nutrition } };
  await service.as.maker.put(`/items/${itemId}/label-settings`, version, body).expect(200);
};

const look = async (lotCode: string, wishes: object, name: string, dpis: number[] = [203, 300]) => {
  const answer = await service.as.seller
    .post(`/lots/${lotCode}/label-previews`, { form: 'box_label', copies: 1, ...wishes })
    .buffer(true);
  if (answer.status !== 200) throw new Error(JSON.stringify(answer.body));
  return readPdf(answer.body as Buffer, name, dpis);
};

interface Declared {
  readonly lists: readonly { readonly runs: readonly { readonly text: string }[] }[];
  readonly findings: readonly { readonly code: string; readonly severity: string }[];
}
const declared = async (lotCode: string, query: string): Promise<Declared> =>
  (await service.as.auditor.get(`/lots/${lotCode}/declaration?${query}`).expect(200))
    .body as Declared;
const listOf = (answer: Declared): string => (answer.lists[0]?.runs ?? []).map(({ text }) => text).join(''); // prettier-ignore
const refusals = ({ findings }: Declared): string[] =>
  findings.filter(({ severity }) => severity === 'refusal').map(({ code }) => code);

beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-25T09:00:00Z'));
  const workshop = await service.as.owner.get('/workshop').expect(200);
  const { version } = workshop.body as { version: number };
  const addressLines = ['1 Example Lane', '1000 Nowhere'];
  await service.as.owner.patch('/workshop', version, { addressLines }).expect(200);
  kitchen = await openLabelKitchen(service);
  barItem = await addIngredient(service, kitchen.supplierId, 'Bar', BAR, { gtin: '4006381333931' });
  bar = await kitchen.receive(barItem, '5000', { bestBefore: '2027-11-01' });
  await setUp(barItem, {
    names: names('Dark chocolate', 'Chocolat noir', 'Dunkle Schokolade'),
    storage: names('Keep dry, 14–18 °C', 'Au sec, 14–18 °C', 'Trocken lagern, 14–18 °C'),
    legalName: 'chocolate',
    netGrams: '80',
    symbol: 'gs1datamatrix',
  });
  const fruit = (en: string): Sheet => ({
    ingredient: { names: { en }, group: { kind: 'fruit' } },
  });
  fruits = {
    raspberries: await addIngredient(service, kitchen.supplierId, 'Raspberries', fruit('raspberries')), // prettier-ignore
    currants: await addIngredient(service, kitchen.supplierId, 'Currants', fruit('redcurrants')),
  };
}, 60_000);
afterAll(() => service.close());

describe('one bar for four markets', () => {
  it('speaks three languages on one label, with its cocoa and its nutrition in each', async () => {
    const stock = { kind: 'roll', widthMm: 100, marginMm: 3 };
    const paper = await look(bar, { languages: ['en', 'fr', 'de'], stock }, 'eu-three-languages');
    const text = allText(paper);
    for (const expected of [
      'Ingredients: dark chocolate (cocoa mass, sugar, cocoa butter, emulsifier: soya lecithins)',
      'Ingrédients : chocolat noir (pâte de cacao, sucre, beurre de cacao, émulsifiant : lécithines de soja)',
      'Zutaten: dunkle Schokolade (Kakaomasse, Zucker, Kakaobutter, Emulgator: Sojalecithine)',
      'Cocoa solids: 59% minimum',
      'Cacao : 59 % minimum',
      'Kakao: 59 % mindestens',
      'Best before / À consommer de préférence avant le / Mindestens haltbar bis 01/11/2027',
      'Nutrition declaration',
      'Déclaration nutritionnelle',
      '80 g',
    ]) {
      expect(text).toContain(expected);
    }
    expect(paper.symbols.map(({ dpi }) => dpi)).toEqual([203, 300]);
    for (const symbol of paper.symbols) {
      expect(symbol.symbologyIdentifier).toBe(']d2');
      expect(symbol.text.replaceAll(/[()]/g, '')).toContain(`01040063813339311527110110${bar}`); // prettier-ignore
    }
  });

  it('is another label in the United States', async () => {
    const paper = await look(
      bar,
      { market: 'US', languages: ['en'], stock: { kind: 'die_cut', widthMm: 130, heightMm: 130, marginMm: 3 } }, // prettier-ignore
      'us-two-columns',
    );
    const text = allText(paper);
    for (const expected of [
      'Net Wt 2.8 oz (80 g)',
      'Best before NOV 1, 2027',
      'Contains: Soy.',
      'Nutrition Facts',
      'Serving size 1/3 package (27g)',
      '3 servings per container',
      'Per container',
      'Incl. Added Sugars',
    ]) {
      expect(text).toContain(expected);
    }
    expect(text).not.toContain('Cocoa solids');
    expect(text).not.toContain('Nutrition declaration');
  });

  it('may not be called semisweet there when its chocolate liquor is too little', async () => {
    await setUp(barItem, { americanChocolate: 'milk_chocolate' });
    expect(refusals(await declared(bar, 'market=US&languages=en'))).toEqual(['name-not-allowed']);
    await setUp(barItem, { americanChocolate: 'semisweet_chocolate' });
    expect(refusals(await declared(bar, 'market=US&languages=en'))).toEqual([]);
    await setUp(barItem, { americanChocolate: null });
  });

  it('that gives an origin must say where its cocoa comes from', async () => {
    await setUp(barItem, { origin: { en: 'Made in Examplia' } });
    expect(refusals(await declared(bar, 'languages=en'))).toEqual(['primary-origin-unset']);
    await setUp(barItem, { primaryOrigin: 'differs' });
    expect(refusals(await declared(bar, 'languages=en'))).toEqual(['primary-origin-missing']);
    await setUp(barItem, { primaryOriginText: { en: 'Cocoa does not originate from Examplia' } });
    const text = allText(await look(bar, { languages: ['en'] }, 'origin', []));
    expect(text).toContain('Made in Examplia. Cocoa does not originate from Examplia');
    await setUp(barItem, { origin: null, primaryOrigin: 'unset', primaryOriginText: null });
  });

  it.each([
    ['a4-grid', { page: 'A4', leftMm: 6, topMm: 12, labelHeightMm: 130, pitchYMm: 135 }],
    ['letter-grid', { page: 'LETTER', leftMm: 8, topMm: 8, labelHeightMm: 128, pitchYMm: 130 }],
  ])('fills an %s from its third label on', async (name, grid) => {
    const stock = { kind: 'sheet', columns: 2, rows: 2, labelWidthMm: 96, pitchXMm: 100, marginMm: 3, startAt: 3, ...grid }; // prettier-ignore
    const paper = await look(bar, { languages: ['en'], copies: 3, stock }, name);
    expect(paper.pages).toHaveLength(2);
    expect(paper.symbols.filter(({ dpi }) => dpi === 203)).toHaveLength(3);
    expect(paper.symbols.filter(({ dpi }) => dpi === 300)).toHaveLength(3);
  });
});

describe('a list that names ingredients together', () => {
  const mixOf = async (): Promise<string> => {
    const opened = await service.as.maker.post('/batches', { itemId: kitchen.ganache }).expect(201);
    const { id } = opened.body as { id: string };
    for (const [itemId, quantity] of [
      [fruits.raspberries, '300'],
      [fruits.currants, '250'],
      [kitchen.dark, '450'],
    ] as const) {
      const lotCode = await kitchen.receive(itemId, '500', { bestBefore: '2027-06-01' });
      const draw = { lotCode, quantity, role: 'base', reason: 'a trial' };
      const knowingly = await accepted(service, id, draw);
      await service.as.maker.post(`/batches/${id}/draws`, knowingly).expect(201);
    }
    const finished = await service.as.maker
      .post(`/batches/${id}/finish`, { outputs: [{ quantity: '1000' }] })
      .expect(200);
    return (finished.body as { outputs: { lotCode: string }[] }).outputs[0]?.lotCode ?? '';
  };

  it('as the item’s settings say', async () => {
    const made = await mixOf();
    expect(listOf(await declared(made, 'languages=en'))).toMatch(/^dark chocolate \(.*\), raspberries, redcurrants$/); // prettier-ignore
    await setUp(kitchen.ganache, { names: { en: 'Fruit filling' }, listGroups: ['fruit'] });
    expect(listOf(await declared(made, 'languages=en'))).toMatch(
      /^fruit in varying proportions \(raspberries, redcurrants\), dark chocolate \(/,
    );
    const pair = [{ itemId: fruits.raspberries, orItemId: fruits.currants }];
    await setUp(kitchen.ganache, { listGroups: [], interchangeable: pair });
    const { findings } = await declared(made, 'languages=en');
    expect(findings.map(({ code }) => code)).toContain('not-interchangeable');
  });
});
