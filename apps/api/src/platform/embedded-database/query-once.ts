import { Client } from 'pg';

/** The first row of one query on a connection of its own. */
export const queryOnce = async <Row extends object>(
  url: string,
  sql: string,
): Promise<Row | undefined> => {
  const client = new Client({ connectionString: url, connectionTimeoutMillis: 10_000 });
  // A connection that breaks later must not end the process by an unheard event.
  client.on('error', () => undefined);
  try {
    await client.connect();
    return (await client.query<Row>(sql)).rows[0];
  } finally {
    await client.end().catch(() => undefined);
  }
};
