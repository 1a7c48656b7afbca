import type { Client } from 'pg';
import { quoted, type Table } from './catalogue';

interface ForeignKey {
  readonly table: string;
  readonly name: string;
  readonly definition: string;
}

/**
 * Lays the database's own reactions aside while rows are put back as they were: triggers would
 * write the ledger a second time, and tables refer to each other in circles. `restore` brings the
 * foreign keys back, which checks every row against them, and the triggers. All of it belongs to
 * the caller's transaction, and needs no more than the ownership of the tables.
 */
export const layGuardsAside = async (
  client: Client,
  tables: readonly Table[],
): Promise<{ restore: () => Promise<void> }> => {
  const { rows: keys } = await client.query<ForeignKey>(`
    SELECT conrelid::regclass::text AS table, conname AS name,
           pg_get_constraintdef(oid) AS definition
      FROM pg_constraint
     WHERE contype = 'f' AND connamespace = 'public'::regnamespace
     ORDER BY conrelid::regclass::text, conname`);
  for (const { table, name } of keys) {
    await client.query(`ALTER TABLE ${table} DROP CONSTRAINT ${quoted(name)}`);
  }
  const each = async (action: 'DISABLE' | 'ENABLE'): Promise<void> => {
    for (const { name } of tables) {
      await client.query(`ALTER TABLE public.${quoted(name)} ${action} TRIGGER USER`);
    }
  };
  await each('DISABLE');
  return {
    restore: async () => {
      for (const { table, name, definition } of keys) {
        await client.query(`ALTER TABLE ${table} ADD CONSTRAINT ${quoted(name)} ${definition}`);
      }
      await each('ENABLE');
    },
  };
};
