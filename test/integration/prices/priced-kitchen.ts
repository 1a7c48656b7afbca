import { Client as PgClient } from 'pg';
import type { TestService } from '../../support/service/test-service';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';

/** Changes an item as it is now. */
export const changeItem = async (
  service: TestService,
  id: string,
  change: object,
): Promise<void> => {
  const item = (await service.as.maker.get(`/items/${id}`).expect(200)).body as { version: number };
  await service.as.owner.patch(`/items/${id}`, item.version, change).expect(200);
};

/** A kitchen with prices, an hourly rate, minutes and VAT, so that everything has a cost. */
export const pricedKitchen = async (service: TestService): Promise<Kitchen> => {
  const kitchen = await openKitchen(service);
  await changeItem(service, kitchen.cream, { replacementPrice: '4.20' });
  await changeItem(service, kitchen.couverture, { replacementPrice: '12.00' });
  await changeItem(service, kitchen.tea, { replacementPrice: '50.00' });
  await changeItem(service, kitchen.carton, { replacementPrice: '0.80' });
  await changeItem(service, kitchen.box, { vatClass: 'filled', nominalMassGrams: '44' });
  await changeItem(service, kitchen.piece, { vatClass: 'filled', nominalMassGrams: '11' });
  await service.as.owner
    .post('/workshop/labour-rates', { role: 'maker', ratePerHour: '24.00', fromDay: '2026-01-01' })
    .expect(201);
  await service.as.owner
    .post('/workshop/vat-rates', {
      productClass: 'filled',
      ratePercent: '20',
      fromDay: '2026-01-01',
    })
    .expect(201);
  const workshop = (await service.as.owner.get('/workshop').expect(200)).body as {
    version: number;
  };
  await service.as.owner
    .patch('/workshop', workshop.version, { overheadRule: 'per_hour', overheadValue: '6.00' })
    .expect(200);
  const client = new PgClient({ connectionString: service.databaseUrl });
  await client.connect();
  try {
    for (const [id, minutes] of [
      [kitchen.ganacheVersion, 30],
      [kitchen.pieceVersion, 36],
      [kitchen.boxVersion, 2],
    ]) {
      await client.query('UPDATE recipe_version SET labour_minutes = $2 WHERE id = $1', [
        id,
        minutes,
      ]);
    }
  } finally {
    await client.end();
  }
  return kitchen;
};

interface Made {
  readonly id: string;
  readonly outputs: readonly { readonly lotCode: string }[];
}

/** Opens a batch, draws what it names and finishes it. @returns the code of the first lot made */
export const makeBatch = async (
  service: TestService,
  itemId: string,
  draws: readonly object[],
  finish: object,
): Promise<string> => {
  const opened = await service.as.maker.post('/batches', { itemId }).expect(201);
  const { id } = opened.body as Made;
  for (const draw of draws) await service.as.maker.post(`/batches/${id}/draws`, draw).expect(201);
  const done = await service.as.maker.post(`/batches/${id}/finish`, finish).expect(200);
  return (done.body as Made).outputs[0]?.lotCode ?? '';
};
