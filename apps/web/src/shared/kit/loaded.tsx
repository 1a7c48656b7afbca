import { Button } from '@mantine/core';
import type { UseQueryResult } from '@tanstack/react-query';
import type { ReactNode } from 'react';
import { UnreachableError } from '../../api/problem';
import { useMessages } from '../language/catalogue';
import { kitMessages } from './messages';
import { ProblemNotice } from './problem-notice';

interface Props<T> {
  readonly query: UseQueryResult<T>;
  readonly children: (data: T) => ReactNode;
}

/** What a query brings, once it is there; older data stays in view when a fresh look fails. */
export const Loaded = <T,>({ query, children }: Props<T>) => {
  const t = useMessages(kitMessages);
  if (query.data !== undefined) {
    return (
      <>
        {query.isError && (
          <ProblemNotice error={query.error} onRetry={() => void query.refetch()} />
        )}
        {children(query.data)}
      </>
    );
  }
  if (query.isError && query.error instanceof UnreachableError) {
    return (
      <div className="problem problem-soft" role="status">
        <p>{t('neverSeen')}</p>
        <Button variant="default" onClick={() => void query.refetch()}>
          {t('tryAgain')}
        </Button>
      </div>
    );
  }
  if (query.isError) {
    return <ProblemNotice error={query.error} onRetry={() => void query.refetch()} />;
  }
  return (
    <p className="quiet" role="status">
      {t('loading')}
    </p>
  );
};
