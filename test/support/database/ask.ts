import { Client, type QueryResultRow } from 'pg';

/** One query on a connection of its own. */
export const ask = async <Row extends QueryResultRow>(
  url: string,
  sql: string,
  values: readonly unknown[] = [],
): Promise<Row[]> => {
  const client = new Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query<Row>(sql, [...values])).rows;
  } finally {
    await client.end();
  }
};
