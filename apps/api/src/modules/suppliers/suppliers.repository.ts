import type { Prisma, Supplier } from '../../generated/prisma/client';
import type { Tx } from '../../platform/database/prisma';
import { newId } from '../../platform/ids/new-id';
import type { SupplierView } from './suppliers.dto';

export const supplierView = (supplier: Supplier): SupplierView => ({
  id: supplier.id,
  name: supplier.name,
  addressLines: supplier.addressLines,
  email: supplier.email,
  phone: supplier.phone,
  note: supplier.note,
  active: supplier.active,
  version: supplier.version,
});

export const findSupplier = (tx: Tx, id: string): Promise<Supplier | null> =>
  tx.supplier.findUnique({ where: { id } });

/** Names in alphabetical order, from the one after `after`. */
export const listSuppliers = (
  tx: Tx,
  limit: number,
  after: string | undefined,
): Promise<Supplier[]> =>
  tx.supplier.findMany({
    where: after === undefined ? {} : { name: { gt: after } },
    orderBy: { name: 'asc' },
    take: limit + 1,
  });

export const createSupplier = (
  tx: Tx,
  data: Omit<Prisma.SupplierUncheckedCreateInput, 'id'>,
): Promise<Supplier> => tx.supplier.create({ data: { id: newId(), ...data } });

export const changeSupplier = (
  tx: Tx,
  id: string,
  data: Prisma.SupplierUncheckedUpdateInput,
): Promise<Supplier> =>
  tx.supplier.update({ where: { id }, data: { ...data, version: { increment: 1 } } });
