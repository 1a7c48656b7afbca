import type { Test } from 'supertest';
import type { TestService } from '../service/test-service';

export interface BatchBody {
  readonly id: string;
  readonly code: string;
  readonly draws: readonly { readonly id: string; readonly lotCode: string }[];
  readonly outputs: readonly {
    readonly lotCode: string;
    readonly quantity: string;
    readonly massGrams: string;
    readonly cost: string;
    readonly bestBefore: string | null;
    readonly held: boolean;
  }[];
}

/** What a maker does at the bench, over HTTP. */
export class BenchHands {
  constructor(private readonly service: TestService) {}

  async open(itemId: string, more: object = {}): Promise<BatchBody> {
    const answer = await this.service.as.maker.post('/batches', { itemId, ...more }).expect(201);
    return answer.body as BatchBody;
  }

  draw(batch: { readonly id: string }, body: object, key?: string): Test {
    return this.service.as.maker.post(`/batches/${batch.id}/draws`, body, key);
  }

  finish(batch: { readonly id: string }, body: object): Test {
    return this.service.as.maker.post(`/batches/${batch.id}/finish`, body);
  }

  /** Opens a batch, draws what is named and finishes it; gives it as it was, draws and all. */
  async make(itemId: string, draws: readonly object[], end: object): Promise<BatchBody> {
    const batch = await this.open(itemId);
    for (const body of draws) await this.draw(batch, body).expect(201);
    return (await this.finish(batch, end).expect(200)).body as BatchBody;
  }

  async lot(code: string): Promise<Record<string, unknown>> {
    const answer = await this.service.as.auditor.get(`/lots/${code}`).expect(200);
    return answer.body as Record<string, unknown>;
  }
}
