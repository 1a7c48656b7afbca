import { isDatabaseAway } from '../database/away';
import { serverMessageOf, sqlStateOf } from '../database/conflicts';
import { databaseWords } from './database-words';
import { type Problem, problemType } from './problem';
import { say, type Sentence } from '../../domain/words/say';

interface Row {
  readonly slug: string;
  readonly status: number;
  readonly title: Sentence;
  readonly detail?: Sentence;
}

/**
 * What the database itself refused, by SQLSTATE. The domain refuses first and in better words; a
 * row here is reached when two requests cross, or when a rule is only in the database.
 */
const rows: Readonly<Record<string, Row>> = {
  BL001: { slug: 'append-only', status: 409, title: say`Entries are never changed` },
  BL002: { slug: 'ledger-only', status: 409, title: say`Only a booking changes stock` },
  BL003: { slug: 'frozen', status: 409, title: say`It is in use and never changes` },
  BL004: { slug: 'lot-not-usable', status: 409, title: say`This lot may not be used` },
  BL005: { slug: 'batch-does-not-balance', status: 422, title: say`The batch does not balance` },
  BL006: { slug: 'circle', status: 409, title: say`A lot would be its own ancestor` },
  BL007: { slug: 'wrong-state', status: 409, title: say`Not possible in this state` },
  BL008: { slug: 'not-the-opposite', status: 422, title: say`Not the exact opposite entry` },
  BL009: { slug: 'allergen-unknown', status: 409, title: say`An allergen is not known` },
  BL010: { slug: 'lot-reserved', status: 409, title: say`Reserved for another batch` },
  '23505': {
    slug: 'already-exists',
    status: 409,
    title: say`There is one already`,
    detail: say`Something with this name, code or number exists already. Choose another.`,
  },
  '23503': {
    slug: 'not-found',
    status: 409,
    title: say`Refers to something that is not there`,
    detail: say`The request names something that does not exist here. Look it up and try again.`,
  },
  '23514': {
    slug: 'not-valid',
    status: 422,
    title: say`Against a rule`,
    detail: say`A value is outside what the workshop allows. Check quantities, dates and kinds.`,
  },
  '22003': {
    slug: 'not-valid',
    status: 422,
    title: say`Number too large`,
    detail: say`A quantity or an amount is larger than the books can hold.`,
  },
  '40001': {
    slug: 'busy',
    status: 409,
    title: say`Someone else was quicker`,
    detail: say`Other bookings touched the same lots again and again. Nothing was booked; try again.`,
  },
};

const onHandDetail = say`There is not enough left of this lot. Look at what is on hand and take less, or another lot.`;

/** Honest about what is not known: a commit may have been stored before the connection was lost. */
const away: Problem = {
  type: problemType('database-away'),
  title: say`The database does not answer`,
  status: 503,
  detail: say`The database does not answer at the moment. It is not known whether this was booked: send it again under the same Idempotency-Key, and it is booked once.`,
};

export const problemOfDatabase = (error: unknown): Problem | undefined => {
  if (isDatabaseAway(error)) return away;
  const state = sqlStateOf(error);
  const row = state === undefined ? undefined : rows[state];
  if (row === undefined) return undefined;
  const words = serverMessageOf(error) ?? '';
  if (words.includes('lot_on_hand')) {
    return {
      type: problemType('not-enough-on-hand'),
      title: say`Not enough on hand`,
      status: 409,
      detail: onHandDetail,
    };
  }
  return {
    type: problemType(row.slug),
    title: row.title,
    status: row.status,
    detail: row.detail ?? databaseWords(words),
  };
};
