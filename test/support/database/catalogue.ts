import { ask } from './ask';

/** What a database holds besides rows, one line a thing: the same lines mean the same schema. */
const LINES = `
  SELECT format('column %s.%s %s %s %s', c.relname, a.attname,
                format_type(a.atttypid, a.atttypmod), CASE WHEN a.attnotnull THEN 'required' END,
                pg_get_expr(d.adbin, d.adrelid)) AS line
    FROM pg_class c
    JOIN pg_attribute a ON a.attrelid = c.oid AND a.attnum > 0 AND NOT a.attisdropped
    LEFT JOIN pg_attrdef d ON d.adrelid = c.oid AND d.adnum = a.attnum
   WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'v', 'm')
  UNION ALL
  SELECT format('constraint %s.%s %s', conrelid::regclass, conname, pg_get_constraintdef(oid))
    FROM pg_constraint WHERE connamespace = 'public'::regnamespace AND contype <> 'n'
  UNION ALL
  SELECT indexdef FROM pg_indexes WHERE schemaname = 'public'
  UNION ALL
  SELECT format('%s enabled=%s', pg_get_triggerdef(oid), tgenabled)
    FROM pg_trigger WHERE NOT tgisinternal
  UNION ALL
  SELECT pg_get_functiondef(oid) FROM pg_proc
   WHERE pronamespace = 'public'::regnamespace AND prokind IN ('f', 'p')
  UNION ALL
  SELECT format('sequence %s %s', sequencename, data_type)
    FROM pg_sequences WHERE schemaname = 'public'
  UNION ALL
  SELECT format('view %s %s', viewname, definition) FROM pg_views WHERE schemaname = 'public'`;

export const catalogueOf = async (url: string): Promise<string[]> => {
  const rows = await ask<{ line: string }>(url, `SELECT line FROM (${LINES}) AS l ORDER BY line`);
  return rows.map(({ line }) => line);
};
