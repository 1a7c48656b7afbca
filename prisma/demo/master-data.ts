import type { DemoClient, Team } from './demo-client';
import { INGREDIENTS, PACKAGING } from './ingredients';
import { BOXES, FILLINGS, PIECES } from './recipes';
import { specify } from './specify';
import {
  CUSTOMERS,
  type CustomerKey,
  LABOUR_RATES,
  MOULD_DESIGNS,
  type MouldDesignKey,
  PLACES,
  type SupplierKey,
  SUPPLIERS,
  VAT_RATES,
  WORKSHOP,
} from './workshop';

interface Made {
  readonly id: string;
  readonly version: number;
}

/** Ids by the demo's own names. */
export interface MasterData {
  readonly suppliers: ReadonlyMap<SupplierKey, string>;
  readonly customers: ReadonlyMap<CustomerKey, string>;
  readonly places: ReadonlyMap<string, string>;
  readonly items: ReadonlyMap<string, string>;
  readonly moulds: ReadonlyMap<MouldDesignKey, readonly string[]>;
  readonly designs: ReadonlyMap<MouldDesignKey, string>;
  readonly tanks: ReadonlyMap<'dark' | 'milk', string>;
}

const makeEach = async <K extends string>(
  client: DemoClient,
  path: string,
  rows: readonly (readonly [K, object])[],
): Promise<Map<K, string>> => {
  const ids = new Map<K, string>();
  for (const [key, body] of rows) ids.set(key, (await client.post<Made>(path, body)).id);
  return ids;
};

const entries = <K extends string, T>(record: Readonly<Record<K, T>>): [K, T][] =>
  Object.entries(record) as [K, T][];

const setUpWorkshop = async ({ owner }: Team): Promise<void> => {
  const { version } = await owner.get<{ version: number }>('/workshop');
  await owner.change('PATCH', '/workshop', version, WORKSHOP);
  const fromDay = '2020-01-01';
  for (const rate of LABOUR_RATES) await owner.post('/workshop/labour-rates', { ...rate, fromDay });
  for (const rate of VAT_RATES) await owner.post('/workshop/vat-rates', { ...rate, fromDay });
};

const itemBodies = (): [string, object][] => [
  ...INGREDIENTS.map((row): [string, object] => [
    row.name,
    {
      name: row.name,
      kind: 'ingredient',
      perishable: row.perishable ?? false,
      capsDate: row.capsDate ?? true,
      infusionOnly: row.infusionOnly ?? false,
      warmestTempC: row.warmestTempC ?? null,
      replacementPrice: row.pricePerKg,
    },
  ]),
  ...PACKAGING.map((row): [string, object] => [
    row.name,
    { name: row.name, kind: 'packaging', unit: 'pc', replacementPrice: row.pricePerPiece },
  ]),
  ...FILLINGS.map((row): [string, object] => [row.name, { name: row.name, kind: 'filling' }]),
  ...(['dark', 'milk'] as const).map((kind): [string, object] => [
    `Rework, ${kind} chocolate`,
    { name: `Rework, ${kind} chocolate`, kind: 'filling' },
  ]),
  ...PIECES.map((row): [string, object] => [
    row.name,
    { name: row.name, kind: 'piece', vatClass: 'filled chocolates', storageConditions: STORAGE },
  ]),
  ...BOXES.map((row): [string, object] => [
    row.name,
    {
      name: row.name,
      kind: 'box',
      nominalMassGrams: row.nominalMassG,
      vatClass: 'filled chocolates',
      storageConditions: STORAGE,
    },
  ]),
];

const STORAGE = 'Keep dry, at 14 to 18 °C, away from strong smells.';

const approveSpecifications = async (
  { owner, maker }: Team,
  items: ReadonlyMap<string, string>,
  suppliers: ReadonlyMap<SupplierKey, string>,
): Promise<void> => {
  for (const row of INGREDIENTS) {
    const itemId = items.get(row.name) ?? '';
    const draft = await maker.post<Made>(`/items/${itemId}/specifications`, {
      supplierId: suppliers.get(row.supplier),
      document: `${row.name}, sheet of the supplier (invented)`,
      ...specify(row.specification),
    });
    await owner.post(`/items/${itemId}/specifications/${draft.id}/approve`);
  }
};

const makeMoulds = async (
  { maker }: Team,
  designs: ReadonlyMap<MouldDesignKey, string>,
): Promise<Map<MouldDesignKey, string[]>> => {
  const tags = new Map<MouldDesignKey, string[]>();
  for (const [key, design] of entries(MOULD_DESIGNS)) {
    const made = await maker.post<{ items: { tag: string }[] }>('/moulds', {
      designId: designs.get(key),
      count: design.trays,
    });
    tags.set(
      key,
      made.items.map((mould) => mould.tag),
    );
  }
  return tags;
};

/** Everything that stands before the first delivery, but the recipes. */
export const makeMasterData = async (team: Team): Promise<MasterData> => {
  const { maker, seller } = team;
  await setUpWorkshop(team);
  const suppliers = await makeEach(maker, '/suppliers', entries<SupplierKey, object>(SUPPLIERS));
  const customers = await makeEach(seller, '/customers', entries<CustomerKey, object>(CUSTOMERS));
  const places = await makeEach(
    team.owner,
    '/places',
    PLACES.map((place) => [place.name, place] as const),
  );
  const items = await makeEach(maker, '/items', itemBodies());
  await approveSpecifications(team, items, suppliers);
  const designs = await makeEach(
    maker,
    '/mould-designs',
    entries(MOULD_DESIGNS).map(([key, { design }]) => [key, design] as const),
  );
  const moulds = await makeMoulds(team, designs);
  const tanks = await makeEach(maker, '/tanks', [
    ['dark', tank('Dark tank', items.get('Dark couverture 64 %'))],
    ['milk', tank('Milk tank', items.get('Milk couverture 38 %'))],
  ] as const);
  return { suppliers, customers, places, items, moulds, designs, tanks };
};

const tank = (name: string, itemId: string | undefined): object => ({
  name,
  itemId,
  capacityGrams: '12000.000',
});
