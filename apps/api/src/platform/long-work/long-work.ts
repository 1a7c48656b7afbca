import { setImmediate } from 'node:timers/promises';
import type { Request, Response } from 'express';
import type { InSteps, Step } from '../../domain/steps';
import { say } from '../../domain/words/say';
import { RefusalError } from '../problems/refusal-error';
import { currentContext } from '../requests/request-context';

/** What one request is doing, as far as others may ask about it. */
export interface Work {
  step: Step | undefined;
  restedAt: number;
  readonly stop: AbortController;
}

/** Work of which the client gave the name: the Work-Id of a look, the key of a booking. */
const underWay = new Map<string, Work>();

/** Others wait no longer than this for their turn. */
const TURN_MS = 15;

const stopped = (): RefusalError =>
  new RefusalError({
    code: 'work-stopped',
    detail: say`This was stopped before it was done. Nothing was booked.`,
  });

/**
 * Follows a request. When the client goes away, work for it is stopped. Not a booking: a tablet that
 * lost its connection sends it again and expects it to have happened.
 */
export const followRequest = (request: Request, response: Response): void => {
  const context = currentContext();
  if (context === undefined) return;
  const work: Work = { step: undefined, restedAt: performance.now(), stop: new AbortController() };
  context.work = work;
  const id = request.header('Work-Id') ?? request.header('Idempotency-Key');
  if (id !== undefined) underWay.set(id, work);
  response.on('close', () => {
    if (id !== undefined && underWay.get(id) === work) underWay.delete(id);
    if (!response.writableFinished && context.claim === undefined) work.stop.abort(stopped());
  });
};

export const stepOfWork = (id: string): Step | undefined => underWay.get(id)?.step;

export const stopWork = (id: string): void => underWay.get(id)?.stop.abort(stopped());

/**
 * Stands between two steps of long work: notes how far it is and gives others their turn.
 * @throws RefusalError when the work was stopped: nobody waits for it any more
 */
export const goOn = async (step?: Step): Promise<void> => {
  const work = currentContext()?.work;
  if (work === undefined) return;
  work.step = step;
  if (performance.now() - work.restedAt > TURN_MS) {
    await setImmediate();
    work.restedAt = performance.now();
  }
  work.stop.signal.throwIfAborted();
};

/** Runs a reckoning of the domain, a turn at a time. */
export const inTurns = async <T>(steps: InSteps<T>): Promise<T> => {
  for (;;) {
    const { done, value } = steps.next();
    if (done === true) return value;
    await goOn(value);
  }
};

/** The work's own result, unless it is stopped first. */
export const unlessStopped = async <T>(work: Promise<T>): Promise<T> => {
  const signal = currentContext()?.work?.stop.signal;
  if (signal === undefined) return work;
  let onStop = (): void => undefined;
  const stop = new Promise<never>((_, reject) => {
    onStop = () => {
      reject(signal.reason as Error);
    };
    if (signal.aborted) onStop();
    signal.addEventListener('abort', onStop);
  });
  try {
    return await Promise.race([work, stop]);
  } finally {
    signal.removeEventListener('abort', onStop);
  }
};
