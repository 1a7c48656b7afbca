import { verifyDatabase } from '@api/platform/verify/verify-database';
import { randomUUID } from 'node:crypto';
import { startTestService, type TestService } from '../../support/service/test-service';
import { type BatchBody, BenchHands } from '../../support/workshop/bench';
import { type Kitchen, openKitchen } from '../../support/workshop/kitchen';
import { StraightAt } from '../../support/workshop/straight-at';

let service: TestService;
let kitchen: Kitchen;
let bench: BenchHands;
let database: StraightAt;
let cream: string;
let dark: string;

beforeAll(async () => {
  service = await startTestService();
  kitchen = await openKitchen(service);
  bench = new BenchHands(service);
  database = await StraightAt.open(service.databaseUrl);
  cream = await kitchen.receive(kitchen.cream, '9000');
  dark = await kitchen.receive(kitchen.couverture, '9000');
});
afterAll(async () => {
  expect(await verifyDatabase(service.databaseUrl)).toEqual([]);
  await database.close();
  await service.close();
});

interface Part {
  readonly id: string;
  readonly state: string;
  readonly plannedQuantity: string | null;
  readonly madeQuantity: string;
  readonly held: boolean;
}
interface Shown extends BatchBody {
  readonly plannedQuantity: string | null;
  readonly placeId: string | null;
  readonly lines: readonly { readonly plannedQuantity: string }[];
  readonly part: { readonly number: number; readonly count: number } | null;
  readonly parts: {
    readonly headId: string;
    readonly plannedQuantity: string | null;
    readonly madeQuantity: string;
    readonly missingQuantity: string | null;
    readonly parts: readonly Part[];
  } | null;
}

const open = async (plannedQuantity = '1000'): Promise<Shown> =>
  (await bench.open(kitchen.ganache, { plannedQuantity })) as Shown;
const partOf = (head: { readonly id: string }, plannedQuantity: string, key?: string) =>
  service.as.maker.post(`/batches/${head.id}/parts`, { plannedQuantity }, key);
const opened = async (head: Shown, grams: string): Promise<Shown> =>
  (await partOf(head, grams).expect(201)).body as Shown;
const show = async ({ id }: { readonly id: string }): Promise<Shown> =>
  (await service.as.auditor.get(`/batches/${id}`).expect(200)).body as Shown;

const weighIn = async (batch: Shown, ofCream: string, ofDark: string): Promise<void> => {
  await bench.draw(batch, { lotCode: cream, quantity: ofCream }).expect(201);
  await bench.draw(batch, { lotCode: dark, quantity: ofDark }).expect(201);
};

describe('a filling that is cooked in three pots', () => {
  let head: Shown;
  let second: Shown;
  let third: Shown;

  it('gives each pot its own weights to weigh in, and the head keeps the rest', async () => {
    head = await open();
    expect(head.parts).toBeNull();
    second = await opened(head, '300');
    third = await opened(head, '200');
    expect(second.parts).toMatchObject({ headId: head.id });
    expect(second.part).toEqual({ number: 2, count: 2 });
    expect(second.lines.map((line) => line.plannedQuantity)).toEqual([
      '144.000',
      '6.000',
      '180.000',
    ]);
    const now = await show(head);
    expect(now.plannedQuantity).toBe('500.000');
    expect(now.lines[0]?.plannedQuantity).toBe('240.000');
    expect(now.part).toEqual({ number: 1, count: 3 });
    expect(now.parts).toMatchObject({
      plannedQuantity: '1000.000',
      madeQuantity: '0.000',
      missingQuantity: '0.000',
    });
    expect(now.parts?.parts.map((part) => [part.id, part.plannedQuantity])).toEqual([
      [head.id, '500.000'],
      [second.id, '300.000'],
      [third.id, '200.000'],
    ]);
  });

  it('says which part each is in the register, and nothing of a batch that is made in one', async () => {
    const alone = await open('100');
    const answer = await service.as.auditor.get('/batches?kind=cook&limit=10').expect(200);
    const { items } = answer.body as { items: Shown[] };
    const partOf = ({ id }: Shown) => items.find((one) => one.id === id)?.part;
    expect([head, second, third, alone].map(partOf)).toEqual([
      { number: 1, count: 3 },
      { number: 2, count: 3 },
      { number: 3, count: 3 },
      null,
    ]);
  });

  it('abandons one with its goods, holds one, and finishes the others on their own', async () => {
    await weighIn(second, '144', '180');
    await service.as.maker.post(`/batches/${second.id}/abandon`, { reason: 'burnt' }).expect(200);
    await weighIn(third, '96', '120');
    const reading = { measure: 'temp_c', value: '60', step: 'Boil' };
    await service.as.maker.post(`/batches/${third.id}/readings`, reading).expect(201);
    await bench.finish(third, { outputs: [{ quantity: '216' }] }).expect(200);
    await weighIn(head, '240', '300');
    await bench.finish(head, { outputs: [{ quantity: '540' }] }).expect(200);
    const { parts } = await show(second);
    expect(parts).toMatchObject({ plannedQuantity: '1000.000', madeQuantity: '756.000' });
    expect(parts?.missingQuantity).toBe('244.000');
    expect(
      parts?.parts.map(({ state, madeQuantity, held }) => [state, madeQuantity, held]),
    ).toEqual([
      ['finished', '540.000', false],
      ['abandoned', '0.000', false],
      ['finished', '216.000', true],
    ]);
  });

  it('traces each pot by its own lot: what only one of them took is in no other', async () => {
    const own = await kitchen.receive(kitchen.couverture, '500');
    const first = await open('1000');
    const other = await opened(first, '500');
    await weighIn(first, '200', '300');
    await bench.draw(other, { lotCode: cream, quantity: '200' }).expect(201);
    await bench.draw(other, { lotCode: own, quantity: '300' }).expect(201);
    const made = [];
    for (const batch of [first, other]) {
      const end = await bench.finish(batch, { outputs: [{ quantity: '500' }] }).expect(200);
      made.push((end.body as Shown).outputs[0]?.lotCode ?? '?');
    }
    const ahead = await service.as.auditor.get(`/lots/${own}/trace?direction=forward`).expect(200);
    expect(JSON.stringify(ahead.body)).toContain(made[1]);
    expect(JSON.stringify(ahead.body)).not.toContain(made[0]);
  });
});

describe('a part', () => {
  it('takes over what an abandoned one no longer gives, before it takes from the head', async () => {
    const head = await open('1000');
    const lost = await opened(head, '400');
    await service.as.maker.post(`/batches/${lost.id}/abandon`, { reason: 'burnt' }).expect(200);
    await opened(head, '450');
    expect(await show(head)).toMatchObject({
      plannedQuantity: '550.000',
      parts: { plannedQuantity: '1000.000', missingQuantity: '0.000' },
    });
  });

  it('is opened once for a repeated request, and leaves a line in the journal', async () => {
    const head = await open('1000');
    const key = randomUUID();
    const first = await partOf(head, '300', key).expect(201);
    const again = await partOf(head, '300', key).expect(201);
    expect((again.body as Shown).id).toBe((first.body as Shown).id);
    expect((await show(head)).parts?.parts).toHaveLength(2);
    const lines = await database.rows<{ detail: object }>(
      `SELECT detail FROM journal_entry WHERE action = 'batch.part-opened' AND subject_id = $1`,
      [head.code],
    );
    expect(lines).toEqual([{ detail: { part: (first.body as Shown).code, planned: '300.000' } }]);
  });

  it('is cast by pieces in whole trays', async () => {
    const head = (await bench.open(kitchen.piece, { plannedTrays: 3 })) as Shown;
    const part = await opened(head, '24');
    expect(part).toMatchObject({ plannedQuantity: '24.000', plannedTrays: 1 });
    expect(await show(head)).toMatchObject({ plannedQuantity: '48.000', plannedTrays: 2 });
    const half = await partOf(head, '1.5');
    expect(half.body).toMatchObject({ status: 422, type: '/problems/pieces-not-whole' });
  });

  it('is refused as a part of a part, of a closed batch, of a packing and in excess', async () => {
    const head = await open('1000');
    const part = await opened(head, '400');
    const nested = await partOf(part, '100');
    expect(nested.body).toMatchObject({ status: 409, type: '/problems/part-of-a-part' });
    expect((nested.body as { detail: string }).detail).toContain(part.code);
    const all = await partOf(head, '600');
    expect(all.body).toMatchObject({ status: 422, type: '/problems/part-too-large' });
    expect((all.body as { detail: string }).detail).toContain('600 g');
    expect((await partOf(head, '0')).status).toBe(422);
    expect((await partOf({ id: randomUUID() }, '10')).status).toBe(404);
    const packing = await bench.open(kitchen.box, { plannedQuantity: '10' });
    const boxes = await partOf(packing, '2');
    expect(boxes.body).toMatchObject({ status: 422, type: '/problems/batch-kind-unfit' });
    expect((boxes.body as { detail: string }).detail).toContain('Split it there');
    await service.as.maker.post(`/batches/${head.id}/abandon`, { reason: 'no time' }).expect(200);
    const late = await partOf(head, '100');
    expect(late.body).toMatchObject({ status: 409, type: '/problems/batch-not-open' });
    expect(await show(part)).toMatchObject({ state: 'open', part: { number: 2 } });
  });

  it('is a maker’s to open', async () => {
    const head = await open('1000');
    for (const role of ['seller', 'auditor'] as const) {
      const answer = await service.as[role].post(`/batches/${head.id}/parts`, {
        plannedQuantity: '10',
      });
      expect(answer.status).toBe(403);
    }
    expect((await show(head)).parts).toBeNull();
  });

  it('draws from what was reserved for its head, which others may not', async () => {
    const lot = await kitchen.receive(kitchen.couverture, '600');
    const head = await open('1100');
    await database.rows(
      `INSERT INTO reservation (id, lot_id, batch_id, quantity, expires_at, user_id)
       SELECT gen_random_uuid(), lot.id, batch.id, 600, now() + interval '1 day', lot.user_id
       FROM lot, batch WHERE lot.code = $1 AND batch.id = $2`,
      [lot, head.id],
    );
    const part = await opened(head, '550');
    await bench.draw(part, { lotCode: lot, quantity: '300' }).expect(201);
    const stranger = await open('1000');
    const blocked = await bench.draw(stranger, { lotCode: lot, quantity: '1' });
    expect(blocked.body).toMatchObject({ type: '/problems/lot-reserved' });
    await bench.draw(head, { lotCode: lot, quantity: '300' }).expect(201);
  });
});

describe('the database', () => {
  const insert = (code: string, from: string, head: string, change = '') =>
    [
      `INSERT INTO batch (id, code, kind, recipe_version_id, operator_id, part_of_id)
       SELECT gen_random_uuid(), $1, kind, ${change === '' ? 'recipe_version_id' : change},
         operator_id, $3 FROM batch WHERE id = $2`,
      [code, from, head],
    ] as const;

  it('takes no part of another item, of a part, of a closed batch, and changes none', async () => {
    const head = await open('1000');
    const part = await opened(head, '100');
    const piece = await bench.open(kitchen.piece, { plannedTrays: 1 });
    const packing = await bench.open(kitchen.box, { plannedQuantity: '1' });
    const closed = await open('1000');
    await service.as.maker.post(`/batches/${closed.id}/abandon`, { reason: 'none' }).expect(200);
    expect(await database.refusal(insert('X1', head.id, head.id))).toBeUndefined();
    expect(await database.refusal(insert('X2', piece.id, head.id))).toBe('BL007');
    expect(
      await database.refusal(insert('X3', head.id, head.id, `'${kitchen.pieceVersion}'::uuid`)),
    ).toBe('BL007');
    expect(await database.refusal(insert('X4', head.id, part.id))).toBe('BL007');
    expect(await database.refusal(insert('X5', head.id, closed.id))).toBe('BL007');
    expect(await database.refusal(insert('X6', packing.id, packing.id))).toBeUndefined();
    expect(
      await database.refusal(['UPDATE batch SET part_of_id = id WHERE id = $1', [head.id]]),
    ).toBe('BL007');
    expect(
      await database.refusal(['UPDATE batch SET part_of_id = NULL WHERE id = $1', [part.id]]),
    ).toBe('BL007');
  });
});
