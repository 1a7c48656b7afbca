import { Injectable } from '@nestjs/common';
import { Clock } from '../../platform/clock/clock';
import { DatabaseService } from '../../platform/database/database.service';
import { Transactions } from '../../platform/database/transactions';
import type { Tx } from '../../platform/database/prisma';
import { orNotFound, orRefuse, ProblemError } from '../../platform/problems';
import { balanceView } from './balance.view';
import type { BalanceView, ProvenanceView } from './provenance.dto';
import { provenanceView } from './provenance.view';
import { recallSizesOf } from './recall-sizes';
import type { RecallSizesQuery, RecallSizesView } from './recall-sizes.dto';
import * as roots from './roots';
import type { Roots, Window } from './roots-kept';
import { rootsOfPlace, rootsOfReading } from './roots-of-place';
import { loadDetailedSubgraph } from './subgraph';
import type { Direction } from './subgraph.queries';
import type { TraceStartQuery, TraceView } from './trace.dto';
import { traceView } from './trace.view';
import { say } from '../../domain/words/say';

@Injectable()
export class TracingService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
  ) {}

  /** One statement finds the lot and walks from it, so it is one consistent picture. */
  async traceLot(code: string, direction: Direction): Promise<TraceView> {
    const subgraph = await this.fromLot(code, direction);
    const rootIds = subgraph.lots.filter((row) => row[1] === code).map((row) => row[0]);
    const askedAt = this.clock.now();
    return traceView(subgraph, { direction, rootIds, because: say`lot ${code}`, askedAt });
  }

  traceMould(tag: string, at: string | undefined, direction: Direction): Promise<TraceView> {
    return this.transactions.read(async (tx) =>
      this.trace(tx, await roots.rootsOfMould(tx, tag, at ?? this.now()), direction),
    );
  }

  traceFrom(query: TraceStartQuery): Promise<TraceView> {
    return this.transactions.read(async (tx) =>
      this.trace(tx, await this.findRoots(tx, query), query.direction ?? 'both'),
    );
  }

  /** The lots that a start stands for; recall cases open from the same starts. */
  findRoots(tx: Tx, query: Start): Promise<Roots> {
    const { kind } = query;
    if (kind === 'lot') return roots.byLotCode(tx, required(query.text, 'text'));
    if (kind === 'mould') {
      return roots.rootsOfMould(tx, required(query.text, 'text'), query.from ?? this.now());
    }
    if (kind === 'text') return roots.rootsOfText(tx, required(query.text, 'text'), this.now());
    const id = required(query.id, 'id');
    if (kind === 'reading') return rootsOfReading(tx, id, this.now());
    if (kind === 'tank') return roots.rootsOfTank(tx, id, windowOf(query));
    if (kind === 'place') return rootsOfPlace(tx, id, windowOf(query));
    return roots.rootsById(tx, kind, id, query.from ?? this.now());
  }

  async provenance(code: string): Promise<ProvenanceView> {
    const subgraph = await this.fromLot(code, 'back');
    return provenanceView(subgraph, orRefuse(subgraph.graph), code);
  }

  async balance(code: string): Promise<BalanceView> {
    const subgraph = await this.fromLot(code, 'forward');
    return balanceView(subgraph, code, this.clock.now());
  }

  recallSizes(query: RecallSizesQuery): Promise<RecallSizesView> {
    return this.transactions.read((tx) => recallSizesOf(tx, query, this.clock.now()));
  }

  /** @throws RefusalError not-found */
  private async fromLot(code: string, direction: Direction) {
    const subgraph = await loadDetailedSubgraph(this.database.client, { code }, direction);
    orNotFound(subgraph.lots[0], 'lot', code);
    return subgraph;
  }

  private async trace(tx: Tx, from: Roots, direction: Direction): Promise<TraceView> {
    const subgraph = await loadDetailedSubgraph(tx, from.ids, direction);
    return traceView(subgraph, {
      direction,
      rootIds: from.ids,
      because: from.because,
      askedAt: this.clock.now(),
    });
  }

  private now(): string {
    return this.clock.now().toISOString();
  }
}

/** A start of a trace, and in the same form of a recall case. */
export type Start = Pick<TraceStartQuery, 'kind' | 'id' | 'text' | 'from' | 'to'>;

const required = (value: string | undefined, name: string): string => {
  if (value !== undefined) return value;
  throw new ProblemError(
    'malformed',
    400,
    say`Something is missing`,
    say`This kind of trace needs "${name}" in the address.`,
  );
};

const windowOf = (query: { from?: string; to?: string }): Window => ({
  from: required(query.from, 'from'),
  to: required(query.to, 'to'),
});
