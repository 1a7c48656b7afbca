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
import type { ChangeCustomerDto, CreateCustomerDto, CustomerView } from './customers.dto';
import * as repository from './customers.repository';

@Injectable()
export class CustomersService {
  constructor(
    private readonly database: DatabaseService,
    private readonly transactions: Transactions,
  ) {}

  async list(query: PageQuery): Promise<Page<CustomerView>> {
    const [after] = decodeCursor(query.after, 1) ?? [];
    const limit = limitOf(query);
    const rows = await repository.listCustomers(this.database.client, limit, after);
    return pageOf(rows, limit, repository.customerView, (row) => [row.name]);
  }

  async get(id: string): Promise<CustomerView> {
    const found = await repository.findCustomer(this.database.client, id);
    return repository.customerView(orNotFound(found, 'customer', id));
  }

  create(dto: CreateCustomerDto): Promise<CustomerView> {
    return this.transactions.book(async (tx, by) => {
      const customer = await repository.createCustomer(tx, dto);
      noteInJournal(by, {
        action: 'customer.created',
        subjectKind: 'customer',
        subjectId: customer.name,
      });
      return repository.customerView(customer);
    });
  }

  change(id: string, seen: number, dto: ChangeCustomerDto): Promise<CustomerView> {
    return this.transactions.book(async (tx, by) => {
      const before = orNotFound(await repository.findCustomer(tx, id), 'customer', id);
      refuseIfStale('customer', seen, before.version);
      const after = await repository.changeCustomer(tx, id, dto);
      noteInJournal(by, {
        action: 'customer.changed',
        subjectKind: 'customer',
        subjectId: after.name,
        detail: { ...dto },
      });
      return repository.customerView(after);
    });
  }
}
