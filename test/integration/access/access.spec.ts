import { randomUUID } from 'node:crypto';
import { PASSWORD, startTestService, type TestService } from '../../support/service/test-service';

let service: TestService;
beforeAll(async () => {
  service = await startTestService();
});
afterAll(() => service.close());

describe('signing in', () => {
  it('refuses a wrong password in the words of a problem', async () => {
    const answer = await service.anonymous.post('/session', { name: 'The owner', password: 'no' });
    expect(answer.status).toBe(401);
    expect(answer.headers['content-type']).toContain('application/problem+json');
    expect(answer.body).toMatchObject({ type: '/problems/sign-in-failed', status: 401 });
  });

  it('sets an HttpOnly, SameSite=Strict cookie for a browser', async () => {
    const answer = await service.anonymous
      .post('/session', { name: 'The owner', password: PASSWORD })
      .expect(201);
    const cookie = String(answer.headers['set-cookie']);
    expect(cookie).toMatch(/HttpOnly/);
    expect(cookie).toMatch(/SameSite=Strict/);
    expect(answer.body).not.toHaveProperty('token');
  });

  it('uses the link for the first owner only once', async () => {
    const answer = await service.anonymous.post('/session/first-owner', {
      token: 'x'.repeat(43),
      name: 'Another',
      password: PASSWORD,
    });
    expect(answer.status).toBe(403);
  });
});

describe('roles', () => {
  it('refuses a route to someone who is not signed in', async () => {
    await service.anonymous.get('/suppliers').expect(401);
  });

  it('lets the auditor read and not write', async () => {
    await service.as.auditor.get('/suppliers').expect(200);
    const answer = await service.as.auditor.post('/suppliers', { name: 'Mill' });
    expect(answer.status).toBe(403);
    expect((answer.body as { detail: string }).detail).toContain('auditor');
  });

  it('keeps at least one owner', async () => {
    const users = await service.as.owner.get('/users').expect(200);
    const owner = (users.body as { id: string; role: string; version: number }[]).find(
      (user) => user.role === 'owner',
    );
    const answer = await service.as.owner.patch(`/users/${owner?.id ?? ''}`, owner?.version ?? 0, {
      role: 'maker',
    });
    expect(answer.status).toBe(409);
  });
});

describe('requests', () => {
  it('names an unknown field and books nothing', async () => {
    const answer = await service.as.maker.post('/suppliers', { name: 'Mill', colour: 'red' });
    expect(answer.status).toBe(400);
    expect(answer.body).toMatchObject({
      errors: [{ pointer: '/colour', message: 'colour is not a known field' }],
    });
    const list = await service.as.maker.get('/suppliers').expect(200);
    expect((list.body as { items: unknown[] }).items).toHaveLength(0);
  });

  it('refuses a change to what someone else changed meanwhile', async () => {
    const made = await service.as.maker.post('/suppliers', { name: 'Mill' }).expect(201);
    const { id, version } = made.body as { id: string; version: number };
    await service.as.maker.patch(`/suppliers/${id}`, version, { phone: '1' }).expect(200);
    await service.as.maker.patch(`/suppliers/${id}`, version, { phone: '2' }).expect(412);
  });

  it('answers an unreadable body and an unknown address as problems', async () => {
    await service.as.owner
      .get('/nowhere')
      .expect(404)
      .expect(/problems\/no-such-page/);
    await service.as.owner.get('/suppliers/not-an-id').expect(400);
    await service.as.owner.get(`/suppliers/${randomUUID()}`).expect(404);
  });
});
