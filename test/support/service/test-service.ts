import 'reflect-metadata';
import { randomUUID } from 'node:crypto';
import type { NestExpressApplication } from '@nestjs/platform-express';
import { createApp } from '@api/app.factory';
import { FirstOwnerService } from '@api/modules/access';
import { Clock } from '@api/platform/clock/clock';
import { readConfig } from '@api/platform/config/config';
import request, { type Test } from 'supertest';
import { createTestDatabase, type TestDatabase } from '../database/test-database';

export const PASSWORD = 'correct horse battery';

export type TestRole = 'owner' | 'maker' | 'seller' | 'auditor';

/** One person's requests against the service, over HTTP. */
export class Client {
  constructor(
    private readonly origin: string,
    private readonly token: string | undefined,
  ) {}

  get(path: string): Test {
    return this.signed(request(this.origin).get(`/api${path}`));
  }

  /** A booking under an Idempotency-Key of its own, unless one is given. */
  post(path: string, body: object = {}, key: string = randomUUID()): Test {
    const sent = request(this.origin).post(`/api${path}`).set('Idempotency-Key', key);
    return this.signed(sent).send(body);
  }

  patch(path: string, version: number, body: object): Test {
    const sent = request(this.origin)
      .patch(`/api${path}`)
      .set('If-Match', `"${String(version)}"`);
    return this.signed(sent).send(body);
  }

  put(path: string, version: number, body: object): Test {
    const sent = request(this.origin)
      .put(`/api${path}`)
      .set('If-Match', `"${String(version)}"`);
    return this.signed(sent).send(body);
  }

  /** Sends one file as a form does. */
  upload(
    path: string,
    field: string,
    bytes: Buffer,
    file: { filename: string; contentType: string },
  ): Test {
    return this.signed(request(this.origin).post(`/api${path}`)).attach(field, bytes, file);
  }

  delete(path: string): Test {
    return this.signed(request(this.origin).delete(`/api${path}`));
  }

  private signed(test: Test): Test {
    return this.token === undefined ? test : test.set('Authorization', `Bearer ${this.token}`);
  }
}

const tokenFor = async (origin: string, name: string): Promise<string> => {
  const answer = await request(origin)
    .post('/api/session')
    .send({ name, password: PASSWORD, kind: 'script' })
    .expect(201);
  return (answer.body as { token: string }).token;
};

export interface RunningService {
  readonly app: NestExpressApplication;
  /** http://127.0.0.1:port */
  readonly origin: string;
  readonly databaseUrl: string;
  readonly clock: Clock;
  close(): Promise<void>;
}

/** The whole service on a database of its own, listening on a free port. */
export const startServiceOn = async (database: TestDatabase): Promise<RunningService> => {
  const config = {
    ...readConfig({ PORT: '0', LOG_LEVEL: 'silent' }),
    databaseUrl: database.url,
  };
  const app = await createApp(config, database.url);
  await app.listen(0, '127.0.0.1');
  return {
    app,
    origin: (await app.getUrl()).replace('[::1]', '127.0.0.1'),
    databaseUrl: database.url,
    clock: app.get(Clock),
    close: async () => {
      await app.close();
      await database.drop();
    },
  };
};

/** The same on an empty database. */
export const startEmptyService = async (): Promise<RunningService> =>
  startServiceOn(await createTestDatabase());

export interface TestService extends RunningService {
  readonly anonymous: Client;
  readonly as: Readonly<Record<TestRole, Client>>;
}

/** Signs the owner up and a person of each role in (named "The owner", "The maker", …). */
export const signUp = async (
  origin: string,
  ownerToken: string | undefined,
): Promise<{ as: TestService['as']; token: string }> => {
  await request(origin)
    .post('/api/session/first-owner')
    .send({ token: ownerToken, name: 'The owner', password: PASSWORD })
    .expect(201);
  const token = await tokenFor(origin, 'The owner');
  const owner = new Client(origin, token);
  const client = async (role: TestRole): Promise<Client> => {
    const name = `The ${role}`;
    await owner.post('/users', { name, role, password: PASSWORD, pin: '4711' }).expect(201);
    return new Client(origin, await tokenFor(origin, name));
  };
  const as = {
    owner,
    maker: await client('maker'),
    seller: await client('seller'),
    auditor: await client('auditor'),
  };
  return { as, token };
};

/** A service with a person of each role signed in. */
export const startTestService = async (): Promise<TestService> => {
  const running = await startEmptyService();
  const invited = await running.app.get(FirstOwnerService).invite();
  const { as } = await signUp(running.origin, invited);
  return { ...running, anonymous: new Client(running.origin, undefined), as };
};
