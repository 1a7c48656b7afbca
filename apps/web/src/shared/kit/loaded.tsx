import { Button } from '@mantine/core';
import type { ReactNode } from 'react';
import { UnreachableError } from '../../api/problem';
import type { Asked } from '../../api/use-ask';
import { useMessages } from '../language/catalogue';
import { useSeconds, Working } from './long-work';
import { kitMessages } from './messages';
import { ProblemNotice } from './problem-notice';

interface Props<T> {
  readonly query: Asked<T>;
  readonly children: (data: T) => ReactNode;
}

type Look = Pick<Asked<unknown>, 'refetch' | 'stop' | 'workId'>;

/** Before this nobody wonders, and nothing should flicker. */
const SOON_SECONDS = 1;

const OnItsWay = ({ query }: { readonly query: Look & { readonly data?: unknown } }) => {
  const t = useMessages(kitMessages);
  const seconds = useSeconds();
  if (seconds >= SOON_SECONDS) {
    return (
      <Working label={t('loading')} id={query.workId} before={SOON_SECONDS} onCancel={query.stop} />
    );
  }
  if (query.data !== undefined) return null;
  return (
    <p className="quiet" role="status">
      {t('loading')}
    </p>
  );
};

const Halted = (props: { readonly why: string; readonly query: Look }) => {
  const t = useMessages(kitMessages);
  return (
    <div className="problem problem-soft" role="status">
      <p>{props.why}</p>
      <Button variant="default" onClick={() => void props.query.refetch()}>
        {t('tryAgain')}
      </Button>
    </div>
  );
};

/** What was asked for is not there yet, and why. */
const NotYet = <T,>({ query }: { readonly query: Asked<T> }) => {
  const t = useMessages(kitMessages);
  if (!query.isEnabled) return null;
  if (query.isFetching) return <OnItsWay query={query} />;
  if (query.isError && query.error instanceof UnreachableError) {
    return <Halted why={t('neverSeen')} query={query} />;
  }
  if (query.isError) {
    return <ProblemNotice error={query.error} onRetry={() => void query.refetch()} />;
  }
  return <Halted why={t('stopped')} query={query} />;
};

/**
 * What a query brings, once it is there; older data stays in view when a fresh look fails, and what
 * was asked before while something else is being asked.
 */
export const Loaded = <T,>({ query, children }: Props<T>) => {
  if (query.data === undefined) return <NotYet query={query} />;
  return (
    <>
      {query.isPlaceholderData && <NotYet query={query} />}
      {query.isError && <ProblemNotice error={query.error} onRetry={() => void query.refetch()} />}
      {children(query.data)}
    </>
  );
};
