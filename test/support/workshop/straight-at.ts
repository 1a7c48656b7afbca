import { Client } from 'pg';

/** Someone at the database itself, past the service: what is refused here, nothing can do. */
export class StraightAt {
  private constructor(private readonly client: Client) {}

  static async open(databaseUrl: string): Promise<StraightAt> {
    const client = new Client({ connectionString: databaseUrl });
    await client.connect();
    return new StraightAt(client);
  }

  close(): Promise<void> {
    return this.client.end();
  }

  async rows<T extends object>(sql: string, values: readonly unknown[] = []): Promise<T[]> {
    return (await this.client.query<T>(sql, [...values])).rows;
  }

  async row<T extends object>(sql: string, values: readonly unknown[] = []): Promise<T> {
    const [row] = await this.rows<T>(sql, values);
    if (row === undefined) throw new Error(`no row: ${sql}`);
    return row;
  }

  /**
   * Runs statements in one transaction that is never kept, checks that are deferred to the commit
   * included. @returns the SQLSTATE of the refusal, or undefined when all was let through
   */
  async refusal(...statements: readonly (string | readonly [string, readonly unknown[]])[]) {
    await this.client.query('BEGIN');
    try {
      for (const statement of statements) {
        const [sql, values] = typeof statement === 'string' ? [statement, []] : statement;
        await this.client.query(sql, [...values]);
      }
      await this.client.query('SET CONSTRAINTS ALL IMMEDIATE');
      return undefined;
    } catch (error) {
      return (error as { code?: string }).code ?? String(error);
    } finally {
      await this.client.query('ROLLBACK');
    }
  }
}
