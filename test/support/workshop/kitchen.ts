import { randomUUID } from 'node:crypto';
import { Client as PgClient } from 'pg';
import type { TestService } from '../service/test-service';
import { addItem, addSpecification, addSupplier, receive } from './fixtures';

export interface RecipeToAdd {
  readonly itemId: string;
  readonly lines: readonly (readonly [componentId: string, quantity: string, role: string])[];
  readonly yieldMassG?: string;
  readonly yieldPieces?: number;
  readonly shelfLifeDays?: number | null;
  readonly dateKind?: string;
  readonly lifeAfterThawDays?: number;
  readonly steps?: readonly object[];
  readonly mouldDesignId?: string;
}

/** A recipe's next version straight in the database, for tests that are not about recipes. */
export const addRecipe = async (databaseUrl: string, recipe: RecipeToAdd): Promise<string> => {
  const client = new PgClient({ connectionString: databaseUrl });
  await client.connect();
  try {
    await client.query(
      'INSERT INTO recipe (id, item_id) VALUES ($1, $2) ON CONFLICT (item_id) DO NOTHING',
      [randomUUID(), recipe.itemId],
    );
    const versionId = randomUUID();
    await client.query(
      `INSERT INTO recipe_version (id, recipe_id, number, yield_mass_g, yield_pieces,
         shelf_life_days, shelf_life_basis, date_kind, steps, mould_design_id,
         life_after_thaw_days)
       SELECT $1, recipe.id, 1 + coalesce((SELECT max(number) FROM recipe_version
         WHERE recipe_id = recipe.id), 0), $3, $4, $5, 'chosen', $6, $7, $8, $9
       FROM recipe WHERE item_id = $2`,
      [
        versionId,
        recipe.itemId,
        recipe.yieldMassG ?? null,
        recipe.yieldPieces ?? null,
        recipe.shelfLifeDays === undefined ? 30 : recipe.shelfLifeDays,
        recipe.dateKind ?? 'best_before',
        JSON.stringify(recipe.steps ?? []),
        recipe.mouldDesignId ?? null,
        recipe.lifeAfterThawDays ?? null,
      ],
    );
    for (const [index, [componentId, quantity, role]] of recipe.lines.entries()) {
      await client.query('INSERT INTO recipe_line VALUES ($1, $2, $3, $4, $5, $6)', [
        randomUUID(),
        versionId,
        index + 1,
        componentId,
        quantity,
        role,
      ]);
    }
    return versionId;
  } finally {
    await client.end();
  }
};

/** A small kitchen: what one ganache, its piece and its box of four need, by name. */
export interface Kitchen {
  readonly supplierId: string;
  readonly cream: string;
  readonly couverture: string;
  readonly tea: string;
  readonly carton: string;
  readonly ganache: string;
  readonly piece: string;
  readonly box: string;
  readonly designId: string;
  readonly ganacheVersion: string;
  readonly pieceVersion: string;
  readonly boxVersion: string;
  /** Takes goods in and gives the code of the lot. */
  readonly receive: (itemId: string, quantity: string, more?: object) => Promise<string>;
}

const STEPS = [
  { title: 'Boil', text: 'Boil the cream', checks: [{ measure: 'temp_c', low: '82', high: '95' }] },
];

export const openKitchen = async (service: TestService): Promise<Kitchen> => {
  const supplierId = (await addSupplier(service, `Supplier ${randomUUID()}`)).id;
  const item = async (name: string, kind: string, more: object = {}): Promise<string> =>
    (await addItem(service, { name: `${name} ${randomUUID().slice(0, 8)}`, kind, ...more })).id;
  const cream = await item('Cream', 'ingredient', { perishable: true });
  const couverture = await item('Dark couverture', 'ingredient');
  const tea = await item('Tea', 'ingredient', { infusionOnly: true, capsDate: false });
  const carton = await item('Carton', 'packaging');
  const ganache = await item('Tea ganache', 'filling');
  const piece = await item('Tea dome', 'piece');
  const box = await item('Box of four', 'box');
  for (const id of [cream, couverture, tea]) await addSpecification(service, id, supplierId);
  const design = await service.as.maker
    .post('/mould-designs', { name: `Dome ${randomUUID()}`, shape: 'dome', rows: 3, columns: 8 })
    .expect(201);
  const designId = (design.body as { id: string }).id;
  const url = service.databaseUrl;
  return {
    supplierId,
    ...{ cream, couverture, tea, carton, ganache, piece, box, designId },
    ganacheVersion: await addRecipe(url, {
      itemId: ganache,
      yieldMassG: '1000',
      steps: STEPS,
      lines: [
        [cream, '480', 'base'],
        [tea, '20', 'infusion'],
        [couverture, '600', 'base'],
      ],
    }),
    pieceVersion: await addRecipe(url, {
      itemId: piece,
      yieldPieces: 24,
      mouldDesignId: designId,
      lines: [
        [couverture, '144', 'shell'],
        [ganache, '120', 'filling'],
      ],
    }),
    boxVersion: await addRecipe(url, {
      itemId: box,
      yieldPieces: 1,
      shelfLifeDays: null,
      lines: [
        [piece, '4', 'slot'],
        [carton, '1', 'packaging'],
      ],
    }),
    receive: async (itemId, quantity, more = {}) =>
      (
        await receive(service, supplierId, {
          itemId,
          quantity,
          ...(itemId === cream ? { useBy: '2099-01-01' } : {}),
          ...more,
        })
      ).lotCode,
  };
};
