import { PrismaPg } from '@prisma/adapter-pg';
import { Pool } from 'pg';
import { Prisma, PrismaClient } from '../../generated/prisma/client';
import { PlannedOnce } from './planned-once';

/** The handle of a running transaction. Repositories take it first and hold no client. */
export type Tx = Prisma.TransactionClient;

export type Database = PrismaClient;

/**
 * Leads the planner to indexes. The data is on solid-state disks and mostly in memory; and under
 * serializable isolation a scan of a whole table is in the way of everyone who writes to it, which
 * is why PostgreSQL's manual advises both settings (13.2.3, Serializable Isolation Level).
 */
export const PLANNER_OPTIONS = '-c random_page_cost=1.1 -c cpu_tuple_cost=0.05';

/**
 * @param url postgresql:// connection string.
 *
 * A connection that is cut while it is handed from one user to the next reports the loss to nobody,
 * and an unheard report ends the process. Each connection has a listener for life; whoever uses the
 * connection next gets the error as the answer to its statement.
 */
export const connect = (url: string, poolSize = 10): PrismaClient => {
  const pool = new Pool({ connectionString: url, max: poolSize, options: PLANNER_OPTIONS });
  pool.on('connect', (client) => {
    client.on('error', () => undefined);
  });
  return new PrismaClient({
    adapter: new PrismaPg(pool, {
      disposeExternalPool: true,
      statementNameGenerator: new PlannedOnce().nameOf,
    }),
  });
};
