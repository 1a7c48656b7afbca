import { ask } from '../database/ask';
import type { DescribedTable } from './read-schema';

const COLUMNS = `
  SELECT c.relname AS table,
         format('%s %s %s%s', a.attname, format_type(a.atttypid, a.atttypmod),
           CASE WHEN t.typcategory = 'A' THEN 'list' WHEN a.attnotnull THEN 'required'
                ELSE 'optional' END,
           CASE WHEN a.atthasdef THEN ' default' END) AS line
    FROM pg_class c
    JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped
    JOIN pg_type t ON t.oid = a.atttypid
   WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r'`;

/** Complete indexes on plain columns; partial ones and those on expressions are SQL's own affair. */
const INDEXES = `
  SELECT c.relname AS table, i.indisprimary AS key, i.indisunique AS unique,
         (SELECT string_agg(a.attname, ', ' ORDER BY array_position(i.indkey, a.attnum))
            FROM pg_attribute a WHERE a.attrelid = c.oid AND a.attnum = ANY (i.indkey)) AS columns
    FROM pg_index i JOIN pg_class c ON c.oid = i.indrelid
   WHERE c.relnamespace = 'public'::regnamespace AND i.indpred IS NULL AND i.indexprs IS NULL`;

const REFERENCES = `
  SELECT c.relname AS table, format('%s -> %s (%s)',
           (SELECT string_agg(a.attname, ', ' ORDER BY array_position(k.conkey, a.attnum))
              FROM pg_attribute a WHERE a.attrelid = k.conrelid AND a.attnum = ANY (k.conkey)),
           k.confrelid::regclass,
           (SELECT string_agg(a.attname, ', ' ORDER BY array_position(k.confkey, a.attnum))
              FROM pg_attribute a WHERE a.attrelid = k.confrelid AND a.attnum = ANY (k.confkey))
         ) AS line
    FROM pg_constraint k JOIN pg_class c ON c.oid = k.conrelid
   WHERE k.contype = 'f' AND k.connamespace = 'public'::regnamespace`;

interface Line {
  readonly table: string;
  readonly line: string;
}

interface Index {
  readonly table: string;
  readonly key: boolean;
  readonly unique: boolean;
  readonly columns: string;
}

/** The tables that a database really has, in the words of `DescribedTable`. */
export const realTables = async (url: string): Promise<DescribedTable[]> => {
  const columns = await ask<Line & Record<string, unknown>>(url, COLUMNS);
  const indexes = await ask<Index & Record<string, unknown>>(url, INDEXES);
  const references = await ask<Line & Record<string, unknown>>(url, REFERENCES);
  const names = [...new Set(columns.map(({ table }) => table))];
  return names
    .filter((name) => name !== '_prisma_migrations')
    .map((name) => {
      const own = indexes.filter(({ table }) => table === name);
      const lines = (from: readonly Line[]): string[] =>
        from.filter(({ table }) => table === name).map(({ line }) => line);
      const of = (rows: readonly Index[]): string[] => rows.map((index) => index.columns);
      return {
        name,
        columns: lines(columns),
        key: of(own.filter(({ key }) => key)).flatMap((line) => line.split(', ')),
        uniques: of(own.filter(({ key, unique }) => unique && !key)),
        indexes: of(own.filter(({ unique }) => !unique)),
        references: lines(references),
      };
    });
};
