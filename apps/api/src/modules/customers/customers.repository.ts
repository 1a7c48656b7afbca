import type { Prisma, Customer } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { newId } from '../../platform/ids/new-id';
import type { CustomerView } from './customers.dto';

export const customerView = (customer: Customer): CustomerView => ({
  id: customer.id,
  name: customer.name,
  addressLines: customer.addressLines,
  email: customer.email,
  phone: customer.phone,
  note: customer.note,
  priceList: customer.priceList,
  minimumLifeDays: customer.minimumLifeDays,
  active: customer.active,
  version: customer.version,
});

export const findCustomer = (tx: Tx, id: string): Promise<Customer | null> =>
  tx.customer.findUnique({ where: { id } });

/** Names in alphabetical order, from the one after `after`. */
export const listCustomers = (
  tx: Tx,
  limit: number,
  after: string | undefined,
): Promise<Customer[]> =>
  tx.customer.findMany({
    where: after === undefined ? {} : { name: { gt: after } },
    orderBy: { name: 'asc' },
    take: limit + 1,
  });

export const createCustomer = (
  tx: Tx,
  data: Omit<Prisma.CustomerUncheckedCreateInput, 'id'>,
): Promise<Customer> => tx.customer.create({ data: { id: newId(), ...data } });

export const changeCustomer = (
  tx: Tx,
  id: string,
  data: Prisma.CustomerUncheckedUpdateInput,
): Promise<Customer> =>
  tx.customer.update({ where: { id }, data: { ...data, version: { increment: 1 } } });
