import { startTestService, type TestService } from '../../support/service/test-service';
import { StraightAt } from '../../support/workshop/straight-at';

let service: TestService;
beforeAll(async () => {
  service = await startTestService();
});
afterAll(() => service.close());

const mark = async (): Promise<string> =>
  ((await service.as.auditor.get('/changes').expect(200)).body as { mark: string }).mark;

const WRITES = `INSERT INTO journal_entry (user_name, action, subject_kind, subject_id)
  VALUES ('Somebody', 'hold.placed', 'lot', 'one')`;

describe('the mark of what changed', () => {
  it('stays as long as nothing is booked, and is another one afterwards', async () => {
    const before = await mark();
    expect(await mark()).toBe(before);
    await service.as.maker.post('/suppliers', { name: 'Hollowbrook Dairy' }).expect(201);
    expect(await mark()).not.toBe(before);
  });

  it('tells of a slow booking that is kept after quicker ones', async () => {
    const slow = await StraightAt.open(service.databaseUrl);
    const quick = await StraightAt.open(service.databaseUrl);
    await slow.rows('BEGIN');
    await slow.rows(WRITES);
    await quick.rows(WRITES);
    const between = await mark();
    await slow.rows('COMMIT');
    expect(await mark()).not.toBe(between);
    await slow.close();
    await quick.close();
  });

  it('is told to those only who are signed in', async () => {
    await service.anonymous.get('/changes').expect(401);
  });
});
