import type { ClientBase } from 'pg';
import type { SequenceValue } from './archive-format';

export interface Table {
  readonly name: string;
  readonly columns: readonly string[];
  readonly key: readonly string[];
}

export const quoted = (name: string): string => `"${name.replaceAll('"', '""')}"`;

/** Every table of the workshop. Prisma's own list of migrations is in the header instead. */
export const readTables = async (client: ClientBase): Promise<Table[]> => {
  const { rows } = await client.query<Table>(`
    SELECT c.relname AS name,
           (SELECT array_agg(a.attname::text ORDER BY a.attnum) FROM pg_attribute a
             WHERE a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped
               AND a.attgenerated = '') AS columns,
           (SELECT coalesce(array_agg(a.attname::text ORDER BY array_position(i.indkey, a.attnum)),
                            ARRAY[]::text[])
              FROM pg_index i JOIN pg_attribute a
                ON a.attrelid = i.indrelid AND a.attnum = ANY (i.indkey)
             WHERE i.indrelid = c.oid AND i.indisprimary) AS key
      FROM pg_class c
     WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r'
       AND c.relname <> '_prisma_migrations'
     ORDER BY c.relname COLLATE "C"`);
  return rows;
};

export const readSequences = async (client: ClientBase): Promise<SequenceValue[]> => {
  const { rows } = await client.query<SequenceValue>(`
    SELECT sequencename AS name, last_value::text AS last
      FROM pg_sequences WHERE schemaname = 'public' ORDER BY sequencename COLLATE "C"`);
  return rows;
};

/**
 * Reads a table in an order that is the same in every database, so that the same rows always give
 * the same bytes.
 */
export const copyOut = ({ name, columns, key }: Table): string => {
  const order = (key.length > 0 ? key : columns)
    .map((column) => `${quoted(column)}::text COLLATE "C"`)
    .join(', ');
  const list = columns.map(quoted).join(', ');
  return `COPY (SELECT ${list} FROM public.${quoted(name)} ORDER BY ${order}) TO STDOUT`;
};

export const copyIn = (name: string, columns: readonly string[]): string =>
  `COPY public.${quoted(name)} (${columns.map(quoted).join(', ')}) FROM STDIN`;

/** Makes values read the same on every server, whatever its own settings are. */
export const fixFormats = (client: ClientBase): Promise<unknown> =>
  client.query(`
    SET datestyle = 'ISO, YMD'; SET intervalstyle = 'postgres'; SET timezone = 'UTC';
    SET bytea_output = 'hex'; SET extra_float_digits = 3; SET client_encoding = 'UTF8';
    SET search_path = 'public'; SET statement_timeout = 0; SET lock_timeout = 0;
    SET idle_in_transaction_session_timeout = 0`);
