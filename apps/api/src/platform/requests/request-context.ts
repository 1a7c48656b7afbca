import { AsyncLocalStorage } from 'node:async_hooks';
import { DEFAULT_LOT_PATTERN } from '../../domain/identification';
import type { Work } from '../long-work/long-work';

export type Role = 'owner' | 'maker' | 'seller' | 'auditor';

/** Who is behind a change and from where, as the journal keeps it. */
export interface Actor {
  readonly userId: string;
  readonly userName: string;
  readonly role: Role;
  readonly fromAddress: string | null;
  readonly workshop: WorkshopHabits;
}

/** What every booking needs to know of the workshop, as it was when the request came in. */
export interface WorkshopHabits {
  /** IANA time zone in which its days begin and end. */
  readonly timeZone: string;
  /** How its lots are called. */
  readonly codePattern: string;
}

/** Of a workshop whose settings nobody has looked at yet. */
export const NEW_WORKSHOP: WorkshopHabits = { timeZone: 'UTC', codePattern: DEFAULT_LOT_PATTERN };

/** The request's promise to happen once; see `Transactions.book`. */
export interface IdempotencyClaim {
  readonly key: string;
  readonly method: string;
  readonly path: string;
  readonly bodyHash: string;
  readonly status: number;
}

export interface RequestContext {
  actor: Actor | undefined;
  claim: IdempotencyClaim | undefined;
  work: Work | undefined;
}

const storage = new AsyncLocalStorage<RequestContext>();

/** Opens the context of one request; everything awaited inside sees it. */
export const withRequestContext = <T>(actor: Actor | undefined, run: () => T): T =>
  storage.run({ actor, claim: undefined, work: undefined }, run);

export const currentContext = (): RequestContext | undefined => storage.getStore();

export const setActor = (actor: Actor): void => {
  const context = storage.getStore();
  if (context !== undefined) context.actor = actor;
};

export const setClaim = (claim: IdempotencyClaim): void => {
  const context = storage.getStore();
  if (context !== undefined) context.claim = claim;
};

export const currentClaim = (): IdempotencyClaim | undefined => storage.getStore()?.claim;

/** @throws Error when called outside a signed-in request: a programming mistake. */
export const currentActor = (): Actor => {
  const actor = storage.getStore()?.actor;
  if (actor === undefined) throw new Error('no actor: this runs outside a signed-in request');
  return actor;
};
