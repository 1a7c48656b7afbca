import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { Agent, type IncomingMessage, request } from 'node:http';
import { PASSWORD } from '../service/test-service';

export interface Answer {
  readonly status: number;
  readonly body: unknown;
}

const connections = new Agent({ keepAlive: true });

/** One person's bookings over HTTP on kept-alive connections: histories send tens of thousands. */
export class Hand {
  private constructor(
    private readonly origin: string,
    readonly token: string,
  ) {}

  static async of(origin: string, name: string): Promise<Hand> {
    const answer = await fetch(`${origin}/api/session`, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({ name, password: PASSWORD, kind: 'script' }),
    });
    return new Hand(origin, ((await answer.json()) as { token: string }).token);
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

  /** An answer as it came. @throws Error when it is refused */
  async text(path: string): Promise<string> {
    const { status, text } = await this.exchange('GET', path);
    if (status >= 300) throw new Error(`refused with ${String(status)}: ${text}`);
    return text;
  }

  private async send(method: string, path: string, body?: object, key?: string): Promise<Answer> {
    const { status, text } = await this.exchange(method, path, body, key);
    return { status, body: JSON.parse(text) as unknown };
  }

  private async exchange(
    method: string,
    path: string,
    body?: object,
    key?: string,
  ): Promise<{ status: number; text: string }> {
    const said = body === undefined ? '' : JSON.stringify(body);
    const sent = request(`${this.origin}/api${path}`, {
      agent: connections,
      method,
      headers: {
        Authorization: `Bearer ${this.token}`,
        'Content-Type': 'application/json',
        'Content-Length': Buffer.byteLength(said),
        ...(key === undefined ? {} : { 'Idempotency-Key': key }),
      },
    });
    sent.end(said);
    try {
      const [answer] = (await once(sent, 'response')) as [IncomingMessage];
      const chunks: Buffer[] = [];
      for await (const chunk of answer) chunks.push(chunk as Buffer);
      return { status: answer.statusCode ?? 0, text: Buffer.concat(chunks).toString('utf8') };
    } catch (error) {
      // The service closed a connection that was idle just as this was sent on it: it was not read.
      if (sent.reusedSocket && isReset(error)) return this.exchange(method, path, body, key);
      throw error;
    }
  }
}

const isReset = (error: unknown): boolean =>
  error instanceof Error && Reflect.get(error, 'code') === 'ECONNRESET';
