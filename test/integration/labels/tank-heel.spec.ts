import { startTestService, type TestService } from '../../support/service/test-service';
import {
  DARK,
  make,
  openLabelKitchen,
  specifyAnew,
  type LabelKitchen,
} from '../../support/workshop/label-kitchen';

let service: TestService;
let kitchen: LabelKitchen;

interface Declared {
  readonly allergens: readonly string[];
  readonly contacts: readonly { readonly allergen: string; readonly verdict: string }[];
  readonly findings: readonly { readonly code: string; readonly facts: unknown }[];
}

beforeAll(async () => {
  service = await startTestService();
  service.clock.setTo(new Date('2026-11-25T09:00:00Z'));
  kitchen = await openLabelKitchen(service);
}, 60_000);
afterAll(() => service.close());

const MILKY = {
  ...DARK,
  ingredient: { names: { en: 'dark chocolate' }, origins: [{ allergen: 'milk' }] },
  allergens: { milk: 'contains' },
  statements: { chocolateKind: 'couverture', allergenProteinPercent: { milk: '2' } },
};

const castFromTank = async (tankId: string): Promise<string> => {
  const opened = await service.as.maker.post('/batches', { itemId: kitchen.piece }).expect(201);
  const { id } = opened.body as { id: string };
  const draw = { tankId, quantity: '220', role: 'shell' };
  await service.as.maker.post(`/batches/${id}/draws`, draw).expect(201);
  const finished = await service.as.maker
    .post(`/batches/${id}/finish`, { outputs: [{ quantity: '20', massGrams: '220' }] })
    .expect(200);
  return (finished.body as { outputs: { lotCode: string }[] }).outputs[0]?.lotCode ?? '';
};

describe('what a tank’s heel brings', () => {
  it('is declared as an ingredient, with its numbers against the reference dose', async () => {
    const plain = await kitchen.receive(kitchen.dark, '3000', { bestBefore: '2027-11-01' });
    await specifyAnew(service, kitchen.supplierId, kitchen.dark, MILKY);
    const milky = await kitchen.receive(kitchen.dark, '1000', { bestBefore: '2027-11-01' });
    const tank = await service.as.maker
      .post('/tanks', { name: 'Heel wheel', itemId: kitchen.dark, capacityGrams: '6000' })
      .expect(201);
    const { id } = tank.body as { id: string };
    const charge = (lotCode: string, quantity: string) =>
      service.as.maker.post(`/tanks/${id}/charges`, { lots: [{ lotCode, quantity }] }).expect(201);
    await charge(milky, '1000');
    await charge(plain, '3000');
    const pieces = await castFromTank(id);
    const answer = await service.as.auditor.get(`/lots/${pieces}/declaration?languages=en`);
    const declared = answer.body as Declared;
    expect(declared.allergens).toContain('milk');
    // A quarter of the tank is heel with 2 % milk protein (5 000 mg/kg); three quarters bring 20.
    expect(declared.contacts).toMatchObject([
      { allergen: 'milk', verdict: 'above', proteinMgPerKg: '5015.000' },
    ]);
    expect(declared.findings.map(({ code }) => code)).toContain('allergen-from-leftover');
  });

  it('a batch drawn on purpose is no leftover', async () => {
    const dark = await kitchen.receive(kitchen.dark, '500', { bestBefore: '2027-11-01' });
    const cast = await make(
      service,
      kitchen.piece,
      [{ lotCode: dark, quantity: '220', role: 'shell' }],
      { outputs: [{ quantity: '20', massGrams: '220' }] },
    );
    const answer = await service.as.auditor.get(`/lots/${cast}/declaration?languages=en`);
    const declared = answer.body as Declared;
    expect(declared.allergens).toContain('milk');
    expect(declared.contacts).toEqual([]);
  });
});
