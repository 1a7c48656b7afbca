import { fillDemo } from '../../../prisma/demo/fill-demo';
import { DemoClient } from '../../../prisma/demo/demo-client';
import { PEOPLE } from '../../../prisma/demo/workshop';
import { type RunningService, startEmptyService } from '../../support/service/test-service';

let service: RunningService;
let owner: DemoClient;

beforeAll(async () => {
  service = await startEmptyService();
  expect(await fillDemo(service.app)).toBe(true);
  const [boss] = PEOPLE;
  owner = await DemoClient.signIn(service.origin, boss.name, boss.password);
}, 900_000);
afterAll(() => service.close());

const count = async (path: string): Promise<number> => {
  const page = await owner.get<unknown[] | { items: unknown[] }>(path);
  return Array.isArray(page) ? page.length : page.items.length;
};

describe('the demo workshop', () => {
  it('has the size that a newcomer can find things in', async () => {
    expect(await count('/items?kind=ingredient&limit=500')).toBeGreaterThanOrEqual(25);
    expect(await count('/items?kind=filling&limit=500')).toBeGreaterThanOrEqual(8);
    expect(await count('/items?kind=piece')).toBe(6);
    expect(await count('/items?kind=box')).toBe(3);
    expect(await count('/suppliers')).toBeGreaterThanOrEqual(6);
    expect(await count('/moulds?limit=100')).toBe(20);
    expect(await count('/complaints')).toBe(3);
  });

  it('is never added to a database where somebody has an account', async () => {
    expect(await fillDemo(service.app)).toBe(false);
  });
});
