import { Injectable } from '@nestjs/common';
import type { Prisma } from '../../generated/prisma/client';
import { DatabaseService } from '../../platform/database/database.service';
import { Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import {
  decodeCursor,
  limitOf,
  type Page,
  pageOf,
  type PageQuery,
} from '../../platform/paging/page';
import { orNotFound } from '../../platform/problems';
import { refuseIfStale } from '../../platform/requests/stale';
import type {
  ChangeMouldDesignDto,
  CreateMouldDesignDto,
  MouldDesignView,
} from './mould-designs.dto';
import * as repository from './mould-designs.repository';

/** The columns of what the request names in the words of the API. */
const columnsOf = <T extends ChangeMouldDesignDto>(dto: T) => {
  const { pieceMassGrams, geometry, ...same } = dto;
  return {
    ...same,
    ...(pieceMassGrams === undefined ? {} : { pieceMassG: pieceMassGrams }),
    ...(geometry === undefined ? {} : { geometry: geometry as Prisma.InputJsonObject }),
  };
};

@Injectable()
export class MouldDesignsService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  async list(query: PageQuery): Promise<Page<MouldDesignView>> {
    const [after] = decodeCursor(query.after, 1) ?? [];
    const limit = limitOf(query);
    const rows = await repository.listMouldDesigns(this.database.client, limit, after);
    return pageOf(rows, limit, repository.mouldDesignView, (row) => [row.name]);
  }

  async get(id: string): Promise<MouldDesignView> {
    const found = await repository.findMouldDesign(this.database.client, id);
    return repository.mouldDesignView(orNotFound(found, 'mould design', id));
  }

  create(dto: CreateMouldDesignDto): Promise<MouldDesignView> {
    return this.transactions.book(async (tx, by) => {
      const design = await repository.createMouldDesign(tx, columnsOf(dto));
      noteInJournal(by, {
        action: 'mould-design.created',
        subjectKind: 'mould-design',
        subjectId: design.name,
      });
      return repository.mouldDesignView(design);
    });
  }

  change(id: string, seen: number, dto: ChangeMouldDesignDto): Promise<MouldDesignView> {
    return this.transactions.book(async (tx, by) => {
      const before = orNotFound(await repository.findMouldDesign(tx, id), 'mould design', id);
      refuseIfStale('mould design', seen, before.version);
      const after = await repository.changeMouldDesign(tx, id, columnsOf(dto));
      noteInJournal(by, {
        action: 'mould-design.changed',
        subjectKind: 'mould-design',
        subjectId: after.name,
        detail: { fields: Object.keys(dto) },
      });
      return repository.mouldDesignView(after);
    });
  }
}
