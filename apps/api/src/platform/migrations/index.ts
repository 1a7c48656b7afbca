export { migrate, migrateTo, migrationsFolder, readAppliedMigrations } from './migrate';
export { MigrationError } from './migration-error';
export { readMigrations } from './migration-files';
export type { MigrationFile } from './migration-files';
