import { sqlStateOf } from './conflicts';
import { field, shapesOf } from './error-shapes';

/** Kinds that the client's adapter gives to a connection that could not be made or was lost. */
const AWAY_KINDS = new Set(['DatabaseNotReachable', 'ConnectionClosed', 'SocketTimeout']);
/** The client's own codes for the same, and for a transaction that lost its connection. */
const AWAY_CODES = new Set(['P1001', 'P1002', 'P1017', 'P2024', 'P2028', 'ECONNREFUSED', 'EPIPE']);
/** Words of plain errors of the driver, which carry no code. */
const AWAY_WORDS = /connection (terminated|ended)|not queryable|timeout exceeded when trying/i;

const isAwayState = (state: string | undefined): boolean =>
  // Class 08: connection exceptions; 57P01 to 57P03: shutting down, crashed, starting up.
  state !== undefined && (state.startsWith('08') || /^57P0[123]$/.test(state));

/** True when the database did not answer, so that nobody knows yet whether a booking was stored. */
export const isDatabaseAway = (thrown: unknown): boolean => {
  if (isAwayState(sqlStateOf(thrown))) return true;
  const { error, cause, adapter, adapterCause } = shapesOf(thrown);
  return [error, cause, adapter, adapterCause].some((shape) => {
    const code = field(shape, 'code');
    const message = field(shape, 'message');
    return (
      AWAY_KINDS.has(String(field(shape, 'kind'))) ||
      (typeof code === 'string' && (AWAY_CODES.has(code) || isAwayState(code))) ||
      (typeof message === 'string' && AWAY_WORDS.test(message))
    );
  });
};
