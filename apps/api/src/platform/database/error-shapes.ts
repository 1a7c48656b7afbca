export const field = (value: unknown, name: string): unknown =>
  typeof value === 'object' && value !== null ? Reflect.get(value, name) : undefined;

/** Where an error of the client may say what went wrong: it comes in more than one shape. */
export const shapesOf = (error: unknown) => {
  const meta = field(error, 'meta');
  const adapter = field(meta, 'driverAdapterError');
  return {
    error,
    /** The adapter's account of an error without a code of the client's own. */
    cause: field(error, 'cause'),
    /** Facts of a known request error, and the adapter's account inside them. */
    meta,
    adapter,
    adapterCause: field(adapter, 'cause'),
  };
};
