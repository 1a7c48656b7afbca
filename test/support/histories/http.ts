import { randomUUID } from 'node:crypto';
import { PASSWORD, type TestService } from '../service/test-service';

export interface Answer {
  readonly status: number;
  readonly body: unknown;
}

/** One person's bookings over HTTP on kept-alive connections: histories send tens of thousands. */
export class Hand {
  private constructor(
    private readonly origin: string,
    private readonly token: string,
  ) {}

  static async of(service: TestService, name: string): Promise<Hand> {
    const answer = await fetch(`${service.origin}/api/session`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({ name, password: PASSWORD, kind: 'script' }),
    });
    return new Hand(service.origin, ((await answer.json()) as { token: string }).token);
  }

  get(path: string): Promise<Answer> {
    return this.send('GET', path);
  }

  /** A booking; the same key sends the same booking again. */
  post(path: string, body: object, key: string = randomUUID()): Promise<Answer> {
    return this.send('POST', path, body, key);
  }

  /** @throws Error when it is refused */
  async must<T>(answer: Promise<Answer>): Promise<T> {
    const { status, body } = await answer;
    if (status >= 300) throw new Error(`refused with ${String(status)}: ${JSON.stringify(body)}`);
    return body as T;
  }

  private async send(method: string, path: string, body?: object, key?: string): Promise<Answer> {
    const answer = await fetch(`${this.origin}/api${path}`, {
      method,
      headers: {
        Authorization: `Bearer ${this.token}`,
        'Content-Type': 'application/json',
        ...(key === undefined ? {} : { 'Idempotency-Key': key }),
      },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    return { status: answer.status, body: await answer.json() };
  }
}
