import { Injectable } from '@nestjs/common';
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
import type { ChangeSupplierDto, CreateSupplierDto, SupplierView } from './suppliers.dto';
import * as repository from './suppliers.repository';

@Injectable()
export class SuppliersService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  async list(query: PageQuery): Promise<Page<SupplierView>> {
    const [after] = decodeCursor(query.after, 1) ?? [];
    const limit = limitOf(query);
    const rows = await repository.listSuppliers(this.database.client, limit, after);
    return pageOf(rows, limit, repository.supplierView, (row) => [row.name]);
  }

  async get(id: string): Promise<SupplierView> {
    const found = await repository.findSupplier(this.database.client, id);
    return repository.supplierView(orNotFound(found, 'supplier', id));
  }

  create(dto: CreateSupplierDto): Promise<SupplierView> {
    return this.transactions.book(async (tx, by) => {
      const supplier = await repository.createSupplier(tx, dto);
      noteInJournal(by, {
        action: 'supplier.created',
        subjectKind: 'supplier',
        subjectId: supplier.name,
      });
      return repository.supplierView(supplier);
    });
  }

  change(id: string, seen: number, dto: ChangeSupplierDto): Promise<SupplierView> {
    return this.transactions.book(async (tx, by) => {
      const before = orNotFound(await repository.findSupplier(tx, id), 'supplier', id);
      refuseIfStale('supplier', seen, before.version);
      const after = await repository.changeSupplier(tx, id, dto);
      noteInJournal(by, {
        action: 'supplier.changed',
        subjectKind: 'supplier',
        subjectId: after.name,
        detail: { ...dto },
      });
      return repository.supplierView(after);
    });
  }
}
