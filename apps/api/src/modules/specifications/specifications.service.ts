import { Injectable } from '@nestjs/common';
import { DatabaseService } from '../../platform/database/database.service';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, RefusalError } from '../../platform/problems';
import { refuseIfStale } from '../../platform/requests/stale';
import { readSpecification } from './specification-json';
import type {
  CreateSpecificationDto,
  SpecificationDto,
  SpecificationView,
} from './specifications.dto';
import * as repository from './specifications.repository';
import { say } from '../../domain/words/say';

const view = async (tx: Tx, itemId: string, id: string): Promise<SpecificationView> => {
  const found = await repository.findSpecification(tx, itemId, id);
  const row = orNotFound(found, 'specification', id);
  return repository.specificationView(row, await repository.nameOfUser(tx, row.approvedById));
};

const load = async (tx: Tx, itemId: string, id: string): Promise<repository.SpecificationRow> =>
  orNotFound(await repository.findSpecification(tx, itemId, id), 'specification', id);

const refuseUnlessDraft = (row: repository.SpecificationRow): void => {
  if (row.state === 'draft') return;
  throw new RefusalError({
    code: 'still-in-use',
    detail: say`An approved specification never changes. Write a new version of it instead.`,
    facts: { number: row.number, state: row.state },
  });
};

@Injectable()
export class SpecificationsService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  list(itemId: string): Promise<SpecificationView[]> {
    return this.transactions.read(async (tx) => {
      const rows = await repository.listSpecifications(tx, itemId);
      const ids = rows.flatMap((row) => row.approvedById ?? []);
      const users = await tx.user.findMany({ where: { id: { in: ids } } });
      const names = new Map(users.map((user) => [user.id, user.name]));
      return rows.map((row) =>
        repository.specificationView(row, names.get(row.approvedById ?? '') ?? null),
      );
    });
  }

  get(itemId: string, id: string): Promise<SpecificationView> {
    return view(this.database.client, itemId, id);
  }

  create(itemId: string, dto: CreateSpecificationDto): Promise<SpecificationView> {
    const json = readSpecification(dto);
    return this.transactions.book(async (tx, by) => {
      const item = orNotFound(await tx.item.findUnique({ where: { id: itemId } }), 'item', itemId);
      if (item.kind !== 'ingredient') {
        throw new RefusalError({
          code: 'not-valid',
          detail: say`${item.name} is made or bought as packaging; only ingredients are specified.`,
        });
      }
      const of = { itemId, supplierId: dto.supplierId, document: dto.document ?? null };
      const id = await repository.createSpecification(tx, by, of, json);
      this.note(by, 'specification.drafted', id, item.name);
      return view(tx, itemId, id);
    });
  }

  change(
    itemId: string,
    id: string,
    seen: number,
    dto: SpecificationDto,
  ): Promise<SpecificationView> {
    const json = readSpecification(dto);
    return this.transactions.book(async (tx, by) => {
      const row = await load(tx, itemId, id);
      refuseUnlessDraft(row);
      refuseIfStale('specification', seen, row.version);
      await repository.changeDraft(tx, id, dto.document ?? null, json);
      this.note(by, 'specification.changed', id, row.supplier.name);
      return view(tx, itemId, id);
    });
  }

  /** From here on it never changes, and what comes in of this supplier pins it. */
  approve(itemId: string, id: string): Promise<SpecificationView> {
    return this.transactions.book(async (tx, by) => {
      const row = await load(tx, itemId, id);
      refuseUnlessDraft(row);
      await tx.specification.update({
        where: { id },
        data: {
          state: 'approved',
          approvedById: by.userId,
          approvedAt: by.at,
          version: { increment: 1 },
        },
        select: { id: true },
      });
      this.note(by, 'specification.approved', id, row.supplier.name);
      return view(tx, itemId, id);
    });
  }

  /** New deliveries no longer pin it; lots that did keep it. */
  withdraw(itemId: string, id: string, reason: string): Promise<SpecificationView> {
    return this.transactions.book(async (tx, by) => {
      const row = await load(tx, itemId, id);
      if (row.state !== 'approved') {
        throw new RefusalError({
          code: 'not-valid',
          detail: say`Only an approved specification is withdrawn.`,
        });
      }
      await tx.specification.update({
        where: { id },
        data: { state: 'withdrawn', withdrawnAt: by.at, version: { increment: 1 } },
        select: { id: true },
      });
      this.note(by, 'specification.withdrawn', id, reason);
      return view(tx, itemId, id);
    });
  }

  private note(by: By, action: string, id: string, about: string): void {
    noteInJournal(by, {
      action,
      subjectKind: 'specification',
      subjectId: id,
      detail: { about },
    });
  }
}
