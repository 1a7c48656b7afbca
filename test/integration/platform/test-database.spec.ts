import { Client } from 'pg';
import { createTestDatabase } from '../../support/database/test-database';

const ask = async (url: string, sql: string): Promise<unknown[]> => {
  const client = new Client({ connectionString: url });
  await client.connect();
  const { rows } = await client.query<Record<string, unknown>>(sql);
  await client.end();
  return rows;
};

describe('a test database', () => {
  it('has the migrated schema and is separate from every other one', async () => {
    const [one, two] = await Promise.all([createTestDatabase(), createTestDatabase()]);
    await ask(one.url, 'CREATE TABLE only_here (id int)');
    const tables = 'SELECT count(*)::int AS n FROM pg_tables WHERE tablename = ';
    expect(await ask(one.url, `${tables} 'only_here'`)).toEqual([{ n: 1 }]);
    expect(await ask(two.url, `${tables} 'only_here'`)).toEqual([{ n: 0 }]);
    expect(await ask(two.url, `${tables} '_prisma_migrations'`)).toEqual([{ n: 1 }]);
    await Promise.all([one.drop(), two.drop()]);
  });

  it('is gone after drop, also while somebody is connected', async () => {
    const { url, drop } = await createTestDatabase();
    const client = new Client({ connectionString: url });
    client.on('error', () => undefined);
    await client.connect();
    await drop();
    await expect(ask(url, 'SELECT 1')).rejects.toThrow('does not exist');
    await client.end().catch(() => undefined);
  });
});
