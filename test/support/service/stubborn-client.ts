import { randomUUID } from 'node:crypto';
import { setTimeout as pause } from 'node:timers/promises';

const PATIENCE_MS = 150_000;

export interface Acknowledged {
  readonly key: string;
  readonly path: string;
  readonly body: Readonly<Record<string, unknown>>;
}

/**
 * Sends bookings the way a till with a bad line does: each under a key of its own, and again under
 * the same key until it is answered. What was answered is written down, in order.
 */
export class StubbornClient {
  readonly acknowledged: Acknowledged[] = [];
  /** Answers that own to a fault of the service; a crash is no excuse for one. */
  readonly faults: string[] = [];
  /** How often a booking had to be sent again. */
  repeats = 0;

  constructor(
    private readonly origin: string,
    private readonly token: string,
  ) {}

  /** @throws Error when the service refuses: such a booking is never going to be taken. */
  async book(path: string, body: object): Promise<Readonly<Record<string, unknown>>> {
    const key = randomUUID();
    const end = Date.now() + PATIENCE_MS;
    while (Date.now() < end) {
      const answer = await this.send(path, body, key);
      if (answer !== undefined) {
        this.acknowledged.push({ key, path, body: answer });
        return answer;
      }
      this.repeats += 1;
      await pause(100);
    }
    throw new Error(`${path} was never answered`);
  }

  private async send(
    path: string,
    body: object,
    key: string,
  ): Promise<Readonly<Record<string, unknown>> | undefined> {
    let status: number;
    let text: string;
    try {
      const answer = await fetch(`${this.origin}/api${path}`, {
        method: 'POST',
        headers: {
          'Content-Type': 'application/json',
          Authorization: `Bearer ${this.token}`,
          'Idempotency-Key': key,
        },
        body: JSON.stringify(body),
        signal: AbortSignal.timeout(20_000),
      });
      ({ status } = answer);
      text = await answer.text();
    } catch {
      return undefined;
    }
    if (status >= 200 && status < 300) return JSON.parse(text) as Record<string, unknown>;
    if (status === 500) this.faults.push(`${path}: ${text}`);
    if (status >= 500 || status === 429 || text.includes('"/problems/busy"')) return undefined;
    throw new Error(`${path} was refused with ${String(status)}: ${text}`);
  }
}
