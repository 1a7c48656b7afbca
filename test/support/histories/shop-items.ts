import type { TestService } from '../service/test-service';
import { addItem, addSpecification, addSupplier } from '../workshop/fixtures';
import { addRecipe } from '../workshop/kitchen';

export interface ShopItems {
  readonly supplierId: string;
  readonly customerId: string;
  readonly cream: string;
  readonly chocolate: string;
  readonly carton: string;
  readonly ganache: string;
  readonly bonbon: string;
  readonly box: string;
}

/** What all histories share: one of each kind of thing, each with what it needs to be used. */
export const addShopItems = async (service: TestService): Promise<ShopItems> => {
  const supplier = await addSupplier(service);
  const customer = await service.as.owner.post('/customers', { name: 'A hotel' }).expect(201);
  const item = async (name: string, kind: string, unit: string): Promise<string> =>
    (await addItem(service, { name, kind, unit, perishable: false })).id;
  const cream = await item('Cream', 'ingredient', 'g');
  const chocolate = await item('Chocolate', 'ingredient', 'g');
  const carton = await item('Carton', 'packaging', 'pc');
  const ganache = await item('Ganache', 'filling', 'g');
  const bonbon = await item('Bonbon', 'piece', 'pc');
  const box = await item('Box', 'box', 'pc');
  for (const id of [cream, chocolate]) await addSpecification(service, id, supplier.id);
  const { databaseUrl } = service;
  await addRecipe(databaseUrl, {
    itemId: ganache,
    lines: [
      [cream, '400', 'base'],
      [chocolate, '600', 'base'],
    ],
    yieldMassG: '1000',
  });
  await addRecipe(databaseUrl, {
    itemId: bonbon,
    lines: [
      [ganache, '500', 'filling'],
      [chocolate, '500', 'shell'],
    ],
    yieldPieces: 100,
  });
  await addRecipe(databaseUrl, {
    itemId: box,
    lines: [
      [bonbon, '4', 'slot'],
      [carton, '1', 'packaging'],
    ],
    yieldPieces: 1,
  });
  return {
    supplierId: supplier.id,
    customerId: (customer.body as { id: string }).id,
    cream,
    chocolate,
    carton,
    ganache,
    bonbon,
    box,
  };
};
