import { Injectable } from '@nestjs/common';
import type { Prisma } from '../../generated/prisma/client';
import { Clock } from '../../platform/clock/clock';
import { DatabaseService } from '../../platform/database/database.service';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { decodeCursor, limitOf, type Page, pageOf } from '../../platform/paging/page';
import { orNotFound, RefusalError } from '../../platform/problems';
import { nextCode } from '../codes';
import { TracingService } from '../tracing';
import { closeReport } from './close-report';
import { currentScope, withoutExcluded } from './recall-scope';
import type {
  CloseRecallDto,
  FreezeDto,
  OpenRecallDto,
  RecallHeadView,
  RecallNoteDto,
  RecallQuery,
  RecallView,
} from './recalls.dto';
import * as repository from './recalls.repository';
import { headView, type KeptRoots, recallView, rootIdsOf } from './recalls.view';
import { anyOf, named, say, sentences, type Sentence } from '../../domain/words/say';

const json = (value: object): Prisma.InputJsonObject => value;

/** @throws RefusalError when the case is not in the state that the step needs */
export const mustBe = (
  recall: repository.CaseWithActions,
  states: readonly string[],
  step: Sentence,
): void => {
  if (states.includes(recall.state)) return;
  throw new RefusalError({
    code: 'not-valid',
    detail: say`Recall ${recall.code} is ${named(recall.state)}; ${step} needs it ${anyOf(states.map(named))}.`,
  });
};

@Injectable()
export class RecallsService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
    private readonly tracing: TracingService,
    private readonly clock: Clock,
  ) {}

  async list(query: RecallQuery): Promise<Page<RecallHeadView>> {
    const [after] = decodeCursor(query.after, 1) ?? [];
    const limit = limitOf(query);
    const filter = { after, state: query.state };
    const rows = await repository.listCases(this.database.client, limit, filter);
    return pageOf(rows, limit, headView, (row) => [row.id]);
  }

  get(code: string): Promise<RecallView> {
    return this.transactions.read((tx) => this.view(tx, code));
  }

  /** Finds the lots that it starts from and keeps what the record says of them at this moment. */
  open(dto: OpenRecallDto): Promise<RecallView> {
    return this.transactions.book(async (tx, by) => {
      const roots: KeptRoots[] = [];
      for (const start of dto.starts) {
        const found = await this.tracing.findRoots(tx, start);
        roots.push({ kind: start.kind, because: found.because, lotIds: [...found.ids] });
      }
      const rootIds = [...new Set(roots.flatMap((one) => one.lotIds))];
      if (rootIds.length === 0) {
        throw new RefusalError({
          code: 'not-valid',
          detail: say`Nothing was found to recall: ${sentences(
            roots.map((one) => one.because),
            '; ',
          )}.`,
        });
      }
      const code = await nextCode(tx, by, 'recall');
      const id = newId();
      await tx.recallCase.create({
        data: {
          id,
          code,
          mode: dto.mode,
          reason: dto.reason,
          roots: roots as unknown as Prisma.InputJsonArray,
          openedAt: by.at,
          openedById: by.userId,
        },
      });
      const scope = await currentScope(tx, rootIds, by.at);
      await repository.addAction(tx, by, id, 'opened', json({ scope }));
      this.journal(by, 'recall.opened', code, { mode: dto.mode, reason: dto.reason });
      return this.view(tx, code);
    });
  }

  /** Keeps the reviewed scope as it stands: it never changes again, later facts show beside it. */
  freeze(code: string, dto: FreezeDto): Promise<RecallView> {
    return this.transactions.book(async (tx, by) => {
      const recall = await this.find(tx, code);
      mustBe(recall, ['open'], say`freezing its scope`);
      const excluded = dto.excluded ?? [];
      const current = await currentScope(tx, rootIdsOf(recall), by.at);
      for (const { lot } of excluded) {
        orNotFound(
          current.lots.find((row) => row.code === lot),
          'lot in scope',
          lot,
        );
      }
      const scope = withoutExcluded(current, excluded);
      await repository.changeCase(tx, recall.id, {
        state: 'frozen',
        frozenAt: by.at,
        frozenScope: json(scope),
      });
      const detail = { lots: scope.lots.length, excluded: excluded.map((row) => ({ ...row })) };
      await repository.addAction(tx, by, recall.id, 'frozen', detail);
      this.journal(by, 'recall.frozen', code, detail);
      return this.view(tx, code);
    });
  }

  note(code: string, dto: RecallNoteDto): Promise<RecallView> {
    return this.transactions.book(async (tx, by) => {
      const recall = await this.find(tx, code);
      mustBe(recall, ['open', 'frozen'], say`a note`);
      if (dto.customerId !== undefined) {
        const [customer] = await repository.customersById(tx, [dto.customerId]);
        orNotFound(customer, 'customer', dto.customerId);
      }
      await repository.addAction(tx, by, recall.id, dto.kind, json({ ...dto }));
      this.journal(by, `recall.${dto.kind}`, code, { ...dto });
      return this.view(tx, code);
    });
  }

  /** Ends the case with its figures as they stand; they are kept as the report. */
  close(code: string, dto: CloseRecallDto): Promise<RecallView> {
    return this.transactions.book(async (tx, by) => {
      const recall = await this.find(tx, code);
      mustBe(recall, ['frozen'], say`closing`);
      const view = await this.view(tx, code);
      await repository.changeCase(tx, recall.id, {
        state: 'closed',
        closedAt: by.at,
        closedById: by.userId,
        closeReport: json(closeReport(recall, view, dto.conclusion, by.at)),
      });
      await repository.addAction(tx, by, recall.id, 'closed', { conclusion: dto.conclusion });
      this.journal(by, 'recall.closed', code, { conclusion: dto.conclusion });
      return this.view(tx, code);
    });
  }

  async find(tx: Tx, code: string): Promise<repository.CaseWithActions> {
    return orNotFound(await repository.findCase(tx, code), 'recall case', code);
  }

  async view(tx: Tx, code: string): Promise<RecallView> {
    return recallView(tx, await this.find(tx, code), this.clock.now());
  }

  private journal(by: By, action: string, code: string, detail: object): void {
    noteInJournal(by, {
      action,
      subjectKind: 'recall',
      subjectId: code,
      detail: json(detail),
    });
  }
}
