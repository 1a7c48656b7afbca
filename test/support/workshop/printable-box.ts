import type { TestService } from '../service/test-service';
import { type LabelKitchen, make, openLabelKitchen } from './label-kitchen';

/** Four boxes, everything inside specified; the workshop has its address. */
export const packFour = async (
  service: TestService,
): Promise<{ readonly code: string; readonly kitchen: LabelKitchen }> => {
  const seen = await service.as.owner.get('/workshop').expect(200);
  const { version } = seen.body as { version: number };
  const addressLines = ['1 Example Lane', '1000 Nowhere'];
  await service.as.owner.patch('/workshop', version, { addressLines }).expect(200);
  const kitchen = await openLabelKitchen(service);
  const dark = await kitchen.receive(kitchen.dark, '5000', { bestBefore: '2099-11-01' });
  const cream = await kitchen.receive(kitchen.cream, '1000', { useBy: '2099-12-20' });
  const nuts = await kitchen.receive(kitchen.hazelnuts, '500', { bestBefore: '2099-06-01' });
  const ganache = await make(
    service,
    kitchen.ganache,
    [
      { lotCode: cream, quantity: '400' },
      { lotCode: dark, quantity: '450' },
      { lotCode: nuts, quantity: '150' },
    ],
    { outputs: [{ quantity: '1000' }] },
  );
  const pieces = await make(
    service,
    kitchen.piece,
    [
      { lotCode: dark, quantity: '120', role: 'shell' },
      { lotCode: ganache, quantity: '100', role: 'filling' },
    ],
    { outputs: [{ quantity: '20', massGrams: '220' }] },
  );
  const draws = [{ lotCode: pieces, quantity: '16' }];
  const code = await make(service, kitchen.box, draws, { outputs: [{ quantity: '4' }] });
  return { code, kitchen };
};

/** The same with all that its label needs before it may print. */
export const packPrintable = async (service: TestService): Promise<string> => {
  const { code, kitchen } = await packFour(service);
  const path = `/items/${kitchen.box}/label-settings`;
  const { version, usual, nutrition, ...settings } = (await service.as.maker.get(path).expect(200))
    .body as { version: number; usual: boolean; nutrition: object };
  expect(usual).toBe(true);
  await service.as.maker
    .put(path, version, {
      ...settings,
      names: { en: 'Hazelnut ganache chocolates' },
      legalName: 'praline',
      nutrition: { ...nutrition, smallLocalMaker: true },
    })
    .expect(200);
  return code;
};
