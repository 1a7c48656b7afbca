import { Injectable } from '@nestjs/common';
import { DatabaseService } from '../../platform/database/database.service';
import { Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import {
  decodeCursor,
  limitOf,
  type Page,
  pageOf,
  type PageQuery,
} from '../../platform/paging/page';
import { orNotFound, RefusalError } from '../../platform/problems';
import { refuseIfStale } from '../../platform/requests/stale';
import { nextTag } from '../codes';
import type { ChangeTankDto, CreateTankDto } from './tanks.dto';
import type { TankView } from './tanks.view';
import { findTank, listTanks, showTank, tankViews } from './tanks.repository';
import { say } from '../../domain/words/say';

@Injectable()
export class TanksService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  async list(query: PageQuery): Promise<Page<TankView>> {
    const [after] = decodeCursor(query.after, 1) ?? [];
    const limit = limitOf(query);
    const rows = await listTanks(this.database.client, limit, after);
    const views = await tankViews(this.database.client, rows);
    return pageOf(
      views,
      limit,
      (tank) => tank,
      (tank) => [tank.name],
    );
  }

  get(id: string): Promise<TankView> {
    return showTank(this.database.client, id);
  }

  create(dto: CreateTankDto): Promise<TankView> {
    return this.transactions.book(async (tx, by) => {
      const item = await tx.item.findUnique({ where: { id: dto.itemId } });
      orNotFound(item, 'item', dto.itemId);
      const id = newId();
      const { capacityGrams: capacityG, ...same } = dto;
      const tag = await nextTag(tx, 'tank');
      await tx.tank.create({ data: { id, tag, capacityG, ...same } });
      noteInJournal(by, {
        action: 'tank.created',
        subjectKind: 'tank',
        subjectId: dto.name,
      });
      return showTank(tx, id);
    });
  }

  change(id: string, seen: number, dto: ChangeTankDto): Promise<TankView> {
    return this.transactions.book(async (tx, by) => {
      const before = await findTank(tx, id);
      refuseIfStale('tank', seen, before.version);
      if (before.currentLotId !== null && (dto.itemId !== undefined || dto.active === false)) {
        throw new RefusalError({
          code: 'still-in-use',
          detail: say`Tank ${before.name} isn’t empty. Empty it first.`,
          facts: { tank: before.name },
        });
      }
      const { capacityGrams, ...same } = dto;
      await tx.tank.update({
        where: { id },
        data: {
          ...same,
          ...(capacityGrams === undefined ? {} : { capacityG: capacityGrams }),
          version: { increment: 1 },
        },
      });
      noteInJournal(by, {
        action: 'tank.changed',
        subjectKind: 'tank',
        subjectId: before.name,
        detail: { ...dto },
      });
      return showTank(tx, id);
    });
  }
}
