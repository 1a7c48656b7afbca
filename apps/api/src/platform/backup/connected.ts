import { Client } from 'pg';

/** A connection for the length of some work, closed whatever happens. */
export const connected = async <T>(
  url: string,
  work: (client: Client) => Promise<T>,
): Promise<T> => {
  const client = new Client({ connectionString: url });
  // A connection that breaks is reported by the query that runs on it.
  client.on('error', () => undefined);
  await client.connect();
  try {
    return await work(client);
  } finally {
    await client.end().catch(() => undefined);
  }
};
