/**
 * The database could not be opened. The message is written for whoever starts the service: what
 * happened and what to do. It is shown without a stack.
 */
export class DatabaseStartError extends Error {
  override readonly name = 'DatabaseStartError';
}
