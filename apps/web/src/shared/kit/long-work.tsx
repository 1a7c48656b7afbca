import { Button } from '@mantine/core';
import { useEffect, useRef, useState } from 'react';
import { ProblemError } from '../../api/problem';
import { useRead } from '../../api/use-api';
import type { Watched } from '../../api/watched';
import { newId } from '../../api/new-id';
import { useFormats } from '../formats/use-formats';
import { useMessages } from '../language/catalogue';
import { kitMessages } from './messages';

/** How far it is, in what the words say: labels, lines, kilobytes. */
export interface Progress {
  readonly done: number;
  /** Unknown when the service streams what it makes. */
  readonly total?: number | undefined;
  readonly inWords: string;
}

/** Whole seconds since it was first asked. */
export const useSeconds = (): number => {
  const [from] = useState(() => Date.now());
  const [now, setNow] = useState(from);
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 500);
    return () => clearInterval(timer);
  }, []);
  return Math.floor((now - from) / 1000);
};

/** What the service knows of it: steps done and how many there are, or nothing. */
const useSteps = (id: string): Progress | undefined => {
  const t = useMessages(kitMessages);
  const formats = useFormats();
  const init = { params: { path: { id } } };
  const { done, total } = useRead('/api/work/{id}', init, { everyMs: 1000 }).data ?? {};
  if (typeof done !== 'number' || typeof total !== 'number') return undefined;
  const [soFar, all] = [formats.number(String(done)), formats.number(String(total))];
  return { done, total, inWords: t('progress', { done: soFar, total: all }) };
};

const Bar = (props: { readonly label: string; readonly progress: Progress | undefined }) => {
  const { label, progress } = props;
  return (
    <>
      <progress
        aria-label={label}
        {...(progress?.total === undefined ? {} : { value: progress.done, max: progress.total })}
      />
      {progress !== undefined && <span>{progress.inWords}</span>}
    </>
  );
};

const StepsBar = (props: { readonly label: string; readonly id: string }) => (
  <Bar label={props.label} progress={useSteps(props.id)} />
);

interface WorkingProps {
  readonly label: string;
  /** Under this the service is asked how far it is. */
  readonly id?: string | undefined;
  readonly progress?: Progress | undefined;
  /** Of a look that nobody pressed a button for: seconds for which it went on before it was shown. */
  readonly before?: number;
  readonly onCancel: () => void;
}

/**
 * Takes the keyboard when the button that began the work has made room for it or can't be pressed
 * meanwhile. Not at Cancel: who pressed Enter twice would stop what was just begun.
 */
const useKeyboard = (pressed: boolean) => {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!pressed) return;
    const active = document.activeElement;
    if (active === null || active.matches('body, :disabled')) place.current?.focus();
  }, [pressed]);
  return place;
};

/**
 * The one way to show work that takes a while: what it is, how far it is where anybody knows, for
 * how long it has gone on, and the way to stop it. Only what it is is read out: no voice counts the
 * seconds.
 */
export const Working = ({ label, id, progress, before = 0, onCancel }: WorkingProps) => {
  const t = useMessages(kitMessages);
  const seconds = before + useSeconds();
  const place = useKeyboard(before === 0);
  return (
    <div ref={place} className="row" role="group" aria-label={label} tabIndex={-1}>
      <span role="status">{label}</span>
      {id === undefined || progress !== undefined ? (
        <Bar label={label} progress={progress} />
      ) : (
        <StepsBar label={label} id={id} />
      )}
      <span className="quiet">
        {seconds < 60
          ? t('seconds', { count: seconds })
          : t('minutes', { minutes: Math.floor(seconds / 60), seconds: seconds % 60 })}
      </span>
      <Button variant="default" aria-label={t('cancelOf', { what: label })} onClick={onCancel}>
        {t('cancel')}
      </Button>
    </div>
  );
};

/**
 * Runs work that can be stopped; what was stopped is no fault. Looks end when their screen is left,
 * bookings go on.
 */
export const useStoppable = (leaving: 'ends' | 'goes-on' = 'ends') => {
  const stop = useRef<AbortController>(undefined);
  const [id, setId] = useState('');
  const [working, setWorking] = useState(false);
  const [error, setError] = useState<unknown>();
  useEffect(
    () => () => {
      if (leaving === 'ends') stop.current?.abort();
    },
    [leaving],
  );
  const run = async (work: (watched: Watched) => Promise<unknown>): Promise<void> => {
    const mine = new AbortController();
    const name = newId();
    stop.current?.abort();
    stop.current = mine;
    setId(name);
    setError(undefined);
    setWorking(true);
    try {
      await work({ signal: mine.signal, id: name });
    } catch (cause) {
      if (!wasStopped(cause, mine.signal)) setError(cause);
    } finally {
      if (stop.current === mine) setWorking(false);
    }
  };
  return { working, id, error, setError, run, cancel: () => stop.current?.abort() };
};

/** A refusal stays a refusal, even when it came while the work was being stopped. */
const wasStopped = (cause: unknown, signal: AbortSignal): boolean =>
  signal.aborted && !(cause instanceof ProblemError);
