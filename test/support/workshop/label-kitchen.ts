import { randomUUID } from 'node:crypto';
import { ALLERGENS } from '@api/domain/specification';
import type { TestService } from '../service/test-service';
import { accepted } from './accepted';
import { addItem, addSupplier, receive } from './fixtures';
import { addRecipe } from './kitchen';

export interface Sheet {
  readonly ingredient: object;
  /** Everything that isn't named here is absent; undefined leaves the supplier silent. */
  readonly allergens?: Readonly<Record<string, string | undefined>>;
  readonly composition?: object;
  readonly nutrition?: object;
  readonly statements?: object;
}

/** An ingredient with one approved specification, written and approved over HTTP. */
export const addIngredient = async (
  service: TestService,
  supplierId: string,
  name: string,
  sheet: Sheet,
  more: object = {},
): Promise<string> => {
  const item = await addItem(service, {
    name: `${name} ${randomUUID().slice(0, 8)}`,
    kind: 'ingredient',
    ...more,
  });
  await specifyAnew(service, supplierId, item.id, sheet);
  return item.id;
};

/** A further version of what the supplier states, approved. */
export const specifyAnew = async (
  service: TestService,
  supplierId: string,
  itemId: string,
  sheet: Sheet,
): Promise<string> => {
  const absent = Object.fromEntries(ALLERGENS.map((allergen) => [allergen, 'absent']));
  const drafted = await service.as.maker
    .post(`/items/${itemId}/specifications`, {
      supplierId,
      ...sheet,
      allergens: { ...absent, ...sheet.allergens },
    })
    .expect(201);
  const { id } = drafted.body as { id: string };
  await service.as.owner.post(`/items/${itemId}/specifications/${id}/approve`).expect(201);
  return id;
};

const LECITHIN = {
  names: { en: 'soya lecithins', fr: 'lécithines de soja' },
  usName: 'soy lecithin',
  percent: '0.5',
  additive: { functionalClass: 'emulsifier', eNumber: 'E322' },
  origins: [{ allergen: 'soy' }],
};

export const DARK: Sheet = {
  ingredient: {
    names: { en: 'dark chocolate', fr: 'chocolat noir' },
    flags: { definedInUnionLaw: true },
    parts: [
      { names: { en: 'cocoa mass', fr: 'pâte de cacao' }, percent: '60' },
      { names: { en: 'sugar', fr: 'sucre' }, percent: '38.5', flags: { sugar: true } },
      { names: { en: 'cocoa butter', fr: 'beurre de cacao' }, percent: '1' },
      LECITHIN,
    ],
  },
  allergens: { soy: 'contains', milk: 'may_contain' },
  statements: { chocolateKind: 'couverture', crossContactProteinMgPerKg: { milk: '20' } },
};

export const CREAM: Sheet = {
  ingredient: { names: { en: 'cream', fr: 'crème' }, origins: [{ allergen: 'milk' }] },
  allergens: { milk: 'contains' },
};

export const HAZELNUTS: Sheet = {
  ingredient: { names: { en: 'hazelnuts', fr: 'noisettes' }, origins: [{ allergen: 'hazelnut' }] },
  allergens: { hazelnut: 'contains' },
};

export interface LabelKitchen {
  readonly supplierId: string;
  readonly dark: string;
  readonly cream: string;
  readonly hazelnuts: string;
  readonly ganache: string;
  readonly piece: string;
  readonly box: string;
  readonly receive: (itemId: string, quantity: string, more?: object) => Promise<string>;
}

/** An owner may let a lot be used that is held for an unknown allergen; its label stays refused. */
const releaseForTrial = async (service: TestService, lotCode: string): Promise<void> => {
  const { holds } = (await service.as.owner.get(`/lots/${lotCode}`).expect(200)).body as {
    holds: { id: string }[];
  };
  for (const { id } of holds) {
    const path = `/lots/${lotCode}/holds/${id}/release`;
    await service.as.owner.post(path, { reason: 'for a trial' }).expect(201);
  }
};

/** Hazelnut ganache, its dark piece and a box of four, every ingredient specified. */
export const openLabelKitchen = async (service: TestService): Promise<LabelKitchen> => {
  const supplierId = (await addSupplier(service, `Supplier ${randomUUID()}`)).id;
  const dark = await addIngredient(service, supplierId, 'Dark couverture', DARK);
  const cream = await addIngredient(service, supplierId, 'Cream', CREAM);
  const hazelnuts = await addIngredient(service, supplierId, 'Hazelnuts', HAZELNUTS);
  const made = async (name: string, kind: string, more: object = {}): Promise<string> =>
    (await addItem(service, { name: `${name} ${randomUUID().slice(0, 8)}`, kind, ...more })).id;
  const ganache = await made('Hazelnut ganache', 'filling');
  const piece = await made('Hazelnut dome', 'piece', { nominalMassGrams: '11' });
  const box = await made('Box of four', 'box', { nominalMassGrams: '44' });
  const url = service.databaseUrl;
  await addRecipe(url, {
    itemId: ganache,
    yieldMassG: '1000',
    lines: [
      [cream, '400', 'base'],
      [dark, '450', 'base'],
      [hazelnuts, '150', 'base'],
    ],
  });
  await addRecipe(url, {
    itemId: piece,
    yieldPieces: 20,
    lines: [
      [dark, '120', 'shell'],
      [ganache, '100', 'filling'],
    ],
  });
  await addRecipe(url, {
    itemId: box,
    yieldPieces: 1,
    shelfLifeDays: null,
    lines: [[piece, '4', 'slot']],
  });
  return {
    ...{ supplierId, dark, cream, hazelnuts, ganache, piece, box },
    receive: async (itemId, quantity, more = {}) => {
      const { lotCode } = await receive(service, supplierId, { itemId, quantity, ...more });
      await releaseForTrial(service, lotCode);
      return lotCode;
    },
  };
};

export interface Drawn {
  readonly lotCode: string;
  readonly quantity: string;
  readonly role?: string;
  readonly reason?: string;
}

/** Opens, draws and finishes one batch and gives the code of what it made. */
export const make = async (
  service: TestService,
  itemId: string,
  draws: readonly Drawn[],
  finish: { outputs: readonly object[]; losses?: readonly object[] },
): Promise<string> => {
  const opened = await service.as.maker.post('/batches', { itemId }).expect(201);
  const { id } = opened.body as { id: string };
  for (const draw of draws) {
    const { role, reason } = draw;
    // Only what the recipe doesn't name is drawn with a reason.
    const body =
      role !== undefined && reason !== undefined
        ? await accepted(service, id, { ...draw, role, reason })
        : draw;
    await service.as.maker.post(`/batches/${id}/draws`, body).expect(201);
  }
  const finished = await service.as.maker.post(`/batches/${id}/finish`, finish);
  if (finished.status !== 200) throw new Error(JSON.stringify(finished.body));
  return (finished.body as { outputs: { lotCode: string }[] }).outputs[0]?.lotCode ?? '';
};
