import { randomUUID } from 'node:crypto';
import type { Clock } from '../../apps/api/src/platform/clock/clock';

/** Speaks to the service over HTTP as one person, like every other client. */
export class DemoClient {
  constructor(
    private readonly origin: string,
    private token: string,
  ) {}

  static async signIn(origin: string, name: string, password: string): Promise<DemoClient> {
    const client = new DemoClient(origin, '');
    const session = await client.post<{ token: string }>('/session', {
      name,
      password,
      kind: 'script',
    });
    client.token = session.token;
    return client;
  }

  get<T>(path: string): Promise<T> {
    return this.send<T>('GET', path);
  }

  post<T>(path: string, body: object = {}): Promise<T> {
    return this.send<T>('POST', path, body, { 'Idempotency-Key': randomUUID() });
  }

  change<T>(method: 'PATCH' | 'PUT', path: string, version: number, body: object): Promise<T> {
    return this.send<T>(method, path, body, { 'If-Match': `"${String(version)}"` });
  }

  private async send<T>(
    method: string,
    path: string,
    body?: object,
    headers: Record<string, string> = {},
  ): Promise<T> {
    const answer = await fetch(`${this.origin}/api${path}`, {
      method,
      headers: {
        ...(this.token === '' ? {} : { Authorization: `Bearer ${this.token}` }),
        'Content-Type': 'application/json',
        ...headers,
      },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
    });
    const text = await answer.text();
    if (!answer.ok) throw new Error(`demo: ${method} ${path} answered ${answer.status}: ${text}`);
    return (text === '' ? undefined : JSON.parse(text)) as T;
  }
}

export interface Team {
  readonly owner: DemoClient;
  readonly maker: DemoClient;
  readonly seller: DemoClient;
}

/** Turns the service's clock to a moment of the demo's past. */
export class Calendar {
  constructor(
    private readonly clock: Clock,
    /** The real now, when the demo is filled. */
    private readonly now: Date,
    readonly days: number,
  ) {}

  /** @param day 0 is the first day of the history; `days` is today. */
  at(day: number, hour: number, minute = 0): void {
    const back = this.days - day;
    const moment = new Date(this.now.getTime() - back * 86_400_000);
    moment.setUTCHours(hour - 1, minute, 0, 0);
    this.clock.setTo(moment < this.now ? moment : this.now);
  }

  /** `YYYY-MM-DD`, some days after a day of the history. */
  dayAfter(day: number, days: number): string {
    const moment = new Date(this.now.getTime() - (this.days - day - days) * 86_400_000);
    return moment.toISOString().slice(0, 10);
  }

  backToNow(): void {
    this.clock.setTo(undefined);
  }
}
