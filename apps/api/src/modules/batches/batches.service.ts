import { Injectable } from '@nestjs/common';
import { DatabaseService } from '../../platform/database/database.service';
import { Transactions } from '../../platform/database/transactions';
import { decodeCursor, limitOf, type Page, pageOf } from '../../platform/paging/page';
import type { BatchQuery, OpenBatchDto } from './batches.dto';
import type { BatchSummaryView, BatchView } from './batches.view';
import { findPlacesInMakings } from './parts.queries';
import { openBatch } from './start-batch';
import { showBatch, summaryView } from './show-batch';
import { summaryIncluded } from './whole-batch';

@Injectable()
export class BatchesService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  /** Newest first. */
  async list(query: BatchQuery): Promise<Page<BatchSummaryView>> {
    const [after] = decodeCursor(query.after, 1) ?? [];
    const limit = limitOf(query);
    const tx = this.database.client;
    const rows = await tx.batch.findMany({
      where: {
        ...(query.state === undefined ? {} : { state: query.state }),
        ...(query.kind === undefined ? {} : { kind: query.kind }),
        ...(query.itemId === undefined
          ? {}
          : {
              OR: [
                { recipeVersion: { recipe: { itemId: query.itemId } } },
                { tank: { itemId: query.itemId } },
              ],
            }),
        ...(after === undefined ? {} : { id: { lt: after } }),
      },
      include: summaryIncluded,
      orderBy: { id: 'desc' },
      take: limit + 1,
    });
    const operators = await tx.user.findMany({
      where: { id: { in: [...new Set(rows.map(({ operatorId }) => operatorId))] } },
      select: { id: true, name: true },
    });
    const names = new Map(operators.map(({ id, name }) => [id, name]));
    const places = await findPlacesInMakings(tx, rows);
    const view = (row: (typeof rows)[number]) =>
      summaryView(row, names.get(row.operatorId) ?? '', places.get(row.id));
    return pageOf(rows, limit, view, (row) => [row.id]);
  }

  get(id: string): Promise<BatchView> {
    return this.transactions.read(async (tx) => {
      const today = this.transactions.today();
      return showBatch(tx, id, today.toString());
    });
  }

  /** Opens a batch of the newest or a named recipe version, which is frozen from then on. */
  open(dto: OpenBatchDto): Promise<BatchView> {
    return this.transactions.book(async (tx, by) => {
      const { id } = await openBatch(tx, by, dto);
      return showBatch(tx, id, by.today.toString());
    });
  }
}
