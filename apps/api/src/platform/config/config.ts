import { join, resolve } from 'node:path';

/** Everything that the environment decides, read once at the start. */
export interface Config {
  readonly port: number;
  readonly host: string;
  /** An external PostgreSQL; when absent the service runs its own. */
  readonly databaseUrl: string | undefined;
  /** Folder of the embedded database. */
  readonly dataFolder: string;
  /** Set the Secure attribute on cookies; on behind TLS. */
  readonly secureCookies: boolean;
  /** Address that links in the terminal and own QR codes begin with. */
  readonly publicUrl: string;
  readonly logLevel: string;
}

/** Repository root: four levels above this file in `src` and in `dist` alike. */
export const repositoryRoot = resolve(__dirname, '../../../../..');

const portOf = (text: string | undefined): number => {
  const port = Number(text ?? '3000');
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    throw new Error(`PORT must be a whole number from 0 to 65535, not "${text ?? ''}"`);
  }
  return port;
};

/** @throws Error when a variable is set to something that can't be meant. */
export const readConfig = (env: Readonly<Record<string, string | undefined>>): Config => {
  const port = portOf(env['PORT']);
  const host = env['HOST'] ?? '127.0.0.1';
  return {
    port,
    host,
    databaseUrl: env['DATABASE_URL'],
    dataFolder: env['BALLOTIN_DATA'] ?? join(repositoryRoot, '.data', 'postgres'),
    secureCookies: env['BALLOTIN_SECURE_COOKIES'] === '1',
    publicUrl: env['BALLOTIN_URL'] ?? `http://localhost:${String(port)}`,
    logLevel: env['LOG_LEVEL'] ?? 'warn',
  };
};
