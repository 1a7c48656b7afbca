import { PrismaPg } from '@prisma/adapter-pg';
import { Prisma, PrismaClient } from '../../generated/prisma/client';

/** The handle of a running transaction. Repositories take it first and hold no client. */
export type Tx = Prisma.TransactionClient;

export type Database = PrismaClient;

/** @param url postgresql:// connection string. */
export const connect = (url: string, poolSize = 10): PrismaClient =>
  new PrismaClient({ adapter: new PrismaPg({ connectionString: url, max: poolSize }) });
