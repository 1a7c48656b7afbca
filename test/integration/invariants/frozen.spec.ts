import { startTestService, type TestService } from '../../support/service/test-service';
import { BenchHands } from '../../support/workshop/bench';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';
import { StraightAt } from '../../support/workshop/straight-at';

// A recipe version or a specification that is in use never changes.
let service: TestService;
let kitchen: Kitchen;
let database: StraightAt;

beforeAll(async () => {
  service = await startTestService();
  kitchen = await openKitchen(service);
  database = await StraightAt.open(service.databaseUrl);
});
afterAll(async () => {
  await database.close();
  await service.close();
});

describe('a recipe version', () => {
  const version = (): string => `id = '${kitchen.ganacheVersion}'`;
  const line = (): string => `version_id = '${kitchen.ganacheVersion}'`;
  const attempts = () => [
    `UPDATE recipe_version SET shelf_life_days = 365 WHERE ${version()}`,
    `UPDATE recipe_version SET frozen_at = NULL WHERE ${version()}`,
    `DELETE FROM recipe_version WHERE ${version()}`,
    `UPDATE recipe_line SET quantity = quantity + 1 WHERE ${line()}`,
    `DELETE FROM recipe_line WHERE ${line()}`,
    `INSERT INTO recipe_line (id, version_id, position, component_id, quantity, role)
     VALUES (gen_random_uuid(), '${kitchen.ganacheVersion}', 9, '${kitchen.cream}', 1, 'base')`,
    `UPDATE recipe_line SET version_id = '${kitchen.ganacheVersion}'
     WHERE version_id = '${kitchen.boxVersion}'`,
  ];

  it('may change until a batch is opened with it, and never after', async () => {
    expect(await database.refusal(attempts()[0] ?? '')).toBeUndefined();
    await new BenchHands(service).open(kitchen.ganache);
    for (const attempt of attempts()) {
      expect([attempt, await database.refusal(attempt)]).toEqual([attempt, 'BL003']);
    }
  });

  it('of an open batch stays the one with which it was opened', async () => {
    const bench = new BenchHands(service);
    const before = await bench.open(kitchen.piece);
    const next = `INSERT INTO recipe_version (id, recipe_id, number)
      SELECT gen_random_uuid(), recipe_id, number + 1 FROM recipe_version
      WHERE id = '${kitchen.pieceVersion}'`;
    await database.rows(next);
    const after = await bench.open(kitchen.piece);
    const shown = await service.as.auditor.get(`/batches/${before.id}`).expect(200);
    expect(shown.body).toMatchObject({ recipeVersionId: kitchen.pieceVersion, recipeNumber: 1 });
    expect(after).toMatchObject({ recipeNumber: 2 });
  });
});

describe('an approved specification', () => {
  it.each([
    `UPDATE specification SET composition = '{"waterG":"1"}'`,
    `UPDATE specification SET state = 'draft', approved_at = NULL`,
    `UPDATE specification SET label_names = '{"en":"another"}'`,
    `INSERT INTO specification_allergen (specification_id, allergen, presence)
     SELECT id, 'milk', 'absent' FROM specification LIMIT 1`,
  ])('never changes: %s', async (attempt) => {
    expect(await database.refusal(attempt)).toBe('BL003');
  });
});
