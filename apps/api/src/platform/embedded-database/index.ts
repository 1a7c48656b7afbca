export { DatabaseStartError } from './database-start-error';
export { startEmbeddedServer } from './embedded-server';
export type { EmbeddedServer, EmbeddedServerOptions } from './embedded-server';
export { openDatabase } from './open-database';
export type { DatabaseConfig, OpenDatabase } from './open-database';
export { runningDatabaseUrl } from './running-database';
