import { Injectable } from '@nestjs/common';
import { DatabaseService } from '../../platform/database/database.service';
import { Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { decodeCursor, limitOf, type Page, pageOf } from '../../platform/paging/page';
import { orNotFound, RefusalError } from '../../platform/problems';
import { nextTag } from '../codes';
import type {
  CreateMouldsDto,
  InspectionDto,
  MouldDetailView,
  MouldQuery,
  MouldView,
} from './moulds.dto';
import { findMould, listMoulds, mouldDetailView, mouldView } from './moulds.repository';
import { say } from '../../domain/words/say';

@Injectable()
export class MouldsService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  async list(query: MouldQuery): Promise<Page<MouldView>> {
    const [after] = decodeCursor(query.after, 1) ?? [];
    const limit = limitOf(query);
    const filter = { designId: query.designId, state: query.state, after };
    const rows = await listMoulds(this.database.client, limit, filter);
    return pageOf(rows, limit, mouldView, (row) => [row.tag]);
  }

  async get(tag: string): Promise<MouldDetailView> {
    return mouldDetailView(orNotFound(await findMould(this.database.client, tag), 'mould', tag));
  }

  /** Adds trays of a design. A new tray is sound by its first inspection, on the day it comes in. */
  create(dto: CreateMouldsDto): Promise<{ items: MouldView[] }> {
    return this.transactions.book(async (tx, by) => {
      const found = await tx.mouldDesign.findUnique({ where: { id: dto.designId } });
      const design = orNotFound(found, 'mould design', dto.designId);
      const items: MouldView[] = [];
      for (let number = 0; number < dto.count; number += 1) {
        const id = newId();
        const tag = await nextTag(tx, 'mould');
        await tx.mould.create({ data: { id, tag, designId: design.id, createdAt: by.at } });
        await tx.mouldInspection.create({
          data: {
            id: newId(),
            mouldId: id,
            result: 'sound',
            note: 'new',
            at: by.at,
            userId: by.userId,
          },
        });
        items.push(mouldView(orNotFound(await findMould(tx, tag), 'mould', tag)));
      }
      noteInJournal(by, {
        action: 'mould.added',
        subjectKind: 'mould-design',
        subjectId: design.name,
        detail: { tags: items.map(({ tag }) => tag) },
      });
      return { items };
    });
  }

  /** Records what an inspection found. A retired tray never comes back. */
  inspect(tag: string, dto: InspectionDto): Promise<MouldDetailView> {
    return this.transactions.book(async (tx, by) => {
      const mould = orNotFound(await findMould(tx, tag), 'mould', tag);
      if (mould.state === 'retired') {
        throw new RefusalError({
          code: 'mould-not-sound',
          detail: say`Mould ${tag} is retired and stays so. Add a new tray under a tag of its own.`,
          facts: { mouldTag: tag },
        });
      }
      await tx.mouldInspection.create({
        data: {
          id: newId(),
          mouldId: mould.id,
          result: dto.result,
          note: dto.note ?? null,
          at: by.at,
          userId: by.userId,
        },
      });
      await tx.mould.update({ where: { id: mould.id }, data: { state: dto.result } });
      noteInJournal(by, {
        action: 'mould.inspected',
        subjectKind: 'mould',
        subjectId: tag,
        detail: { result: dto.result, note: dto.note ?? null },
      });
      return mouldDetailView(orNotFound(await findMould(tx, tag), 'mould', tag));
    });
  }
}
