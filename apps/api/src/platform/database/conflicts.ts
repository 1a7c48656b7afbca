import { field, shapesOf } from './error-shapes';

/**
 * The SQLSTATE behind an error of the client, wherever it hides: on the error itself, on the
 * adapter's cause, or in the `meta` of a known request error.
 */
export const sqlStateOf = (thrown: unknown): string | undefined => {
  const { error, cause, meta, adapter, adapterCause } = shapesOf(thrown);
  const places = [
    ...[error, cause, adapter, adapterCause].map((shape) => field(shape, 'originalCode')),
    ...[meta, cause].map((shape) => field(shape, 'code')),
  ];
  return places.find((code): code is string => typeof code === 'string' && code.length === 5);
};

/** The server's own words, for refusals that its triggers raise. */
export const serverMessageOf = (thrown: unknown): string | undefined => {
  const { cause, meta, adapterCause } = shapesOf(thrown);
  const places = [
    ...[cause, adapterCause].map((shape) => field(shape, 'originalMessage')),
    ...[cause, meta].map((shape) => field(shape, 'message')),
  ];
  return places.find((text): text is string => typeof text === 'string');
};

/**
 * 25P02 is what a statement hears that was sent beside the one which met the conflict; when the
 * first failure was another one, the next attempt meets it again and tells it.
 */
const RETRYABLE = new Set(['40001', '40P01', '25P02']);

/**
 * True when the transaction lost against another and may be tried again. The client reports this
 * in two shapes: code P2034, and a code-less error whose cause is a TransactionWriteConflict.
 */
export const isConflict = (error: unknown): boolean => {
  if (field(error, 'code') === 'P2034') return true;
  if (field(shapesOf(error).cause, 'kind') === 'TransactionWriteConflict') return true;
  const state = sqlStateOf(error);
  return state !== undefined && RETRYABLE.has(state);
};
