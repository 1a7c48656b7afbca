/** The schema could not be brought up to date. The message is for whoever starts the service. */
export class MigrationError extends Error {
  override readonly name = 'MigrationError';
}
