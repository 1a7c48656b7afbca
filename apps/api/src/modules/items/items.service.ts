import { Injectable } from '@nestjs/common';
import { toGtin14 } from '../../domain/identification';
import { DatabaseService } from '../../platform/database/database.service';
import { Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { decodeCursor, limitOf, type Page, pageOf } from '../../platform/paging/page';
import { orNotFound, orRefuse } from '../../platform/problems';
import { refuseIfStale } from '../../platform/requests/stale';
import type { ChangeItemDto, CreateItemDto, ItemQuery, ItemView } from './items.dto';
import * as repository from './items.repository';

/** Fillings are weighed, pieces and boxes are counted; ingredients and packaging may be either. */
const unitOf = (dto: CreateItemDto): string => {
  if (dto.kind === 'filling') return 'g';
  if (dto.kind === 'piece' || dto.kind === 'box') return 'pc';
  return dto.unit ?? (dto.kind === 'packaging' ? 'pc' : 'g');
};

/** The columns of what the request names in the words of the API. */
const columnsOf = (dto: CreateItemDto | ChangeItemDto) => {
  const { nominalMassGrams, gtin, ...same } = dto;
  return {
    ...same,
    ...(nominalMassGrams === undefined ? {} : { nominalMassG: nominalMassGrams }),
    ...(gtin === undefined ? {} : { gtin: gtin === null ? null : orRefuse(toGtin14(gtin)) }),
  };
};

@Injectable()
export class ItemsService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  async list(query: ItemQuery): Promise<Page<ItemView>> {
    const [after] = decodeCursor(query.after, 1) ?? [];
    const limit = limitOf(query);
    const filter = { kind: query.kind, name: query.name, after };
    const rows = await repository.listItems(this.database.client, limit, filter);
    return pageOf(rows, limit, repository.itemView, (row) => [row.name]);
  }

  async get(id: string): Promise<ItemView> {
    const found = await repository.findItem(this.database.client, id);
    return repository.itemView(orNotFound(found, 'item', id));
  }

  create(dto: CreateItemDto): Promise<ItemView> {
    const columns = { ...columnsOf(dto), name: dto.name, kind: dto.kind, unit: unitOf(dto) };
    return this.transactions.book(async (tx, by) => {
      const item = await repository.createItem(tx, columns);
      noteInJournal(by, {
        action: 'item.created',
        subjectKind: 'item',
        subjectId: item.name,
        detail: { kind: item.kind },
      });
      return repository.itemView(item);
    });
  }

  change(id: string, seen: number, dto: ChangeItemDto): Promise<ItemView> {
    const columns = columnsOf(dto);
    return this.transactions.book(async (tx, by) => {
      const before = orNotFound(await repository.findItem(tx, id), 'item', id);
      refuseIfStale('item', seen, before.version);
      const after = await repository.changeItem(tx, id, columns);
      noteInJournal(by, {
        action: 'item.changed',
        subjectKind: 'item',
        subjectId: after.name,
        detail: { ...dto },
      });
      return repository.itemView(after);
    });
  }
}
