import { startEmbeddedServer } from './embedded-server';
import { checkExternal } from './external-database';
import { queryOnce } from './query-once';

export interface DatabaseConfig {
  /** An external PostgreSQL 15 or newer; when set, nothing is started here. */
  readonly databaseUrl?: string | undefined;
  /** The folder of the embedded database. */
  readonly dataFolder: string;
  /** Receives plain sentences for whoever looks at the console. */
  readonly say?: (line: string) => void;
  /** Called when the server's process has been started and only has to be waited for. */
  readonly onStarting?: () => void;
}

export interface OpenDatabase {
  readonly url: string;
  readonly close: () => Promise<void>;
}

export const DATABASE_NAME = 'ballotin';

/**
 * Opens the workshop's database: the external one that DATABASE_URL names, else the embedded one.
 * Throws DatabaseStartError with a sentence for whoever starts the service.
 */
export const openDatabase = async (config: DatabaseConfig): Promise<OpenDatabase> => {
  if (config.databaseUrl !== undefined && config.databaseUrl !== '') {
    await checkExternal(config.databaseUrl);
    return { url: config.databaseUrl, close: () => Promise.resolve() };
  }
  const server = await startEmbeddedServer({
    home: config.dataFolder,
    durable: true,
    say: config.say ?? console.info,
    onStarting: config.onStarting,
  });
  try {
    const exists = await queryOnce(
      server.urlOf('postgres'),
      `SELECT 1 AS found FROM pg_database WHERE datname = '${DATABASE_NAME}'`,
    );
    if (exists === undefined) {
      await queryOnce(server.urlOf('postgres'), `CREATE DATABASE ${DATABASE_NAME}`);
    }
    return { url: server.urlOf(DATABASE_NAME), close: server.stop };
  } catch (error) {
    await server.stop();
    throw error;
  }
};
