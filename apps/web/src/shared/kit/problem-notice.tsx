import { Button } from '@mantine/core';
import { ProblemError, UnreachableError } from '../../api/problem';
import { useMessages } from '../language/catalogue';
import { kitMessages } from './messages';
import type { ReactNode } from 'react';

interface Props {
  readonly error: unknown;
  readonly onRetry?: (() => void) | undefined;
  /** Where the way out is an action of this screen. */
  readonly children?: ReactNode;
}

/** A refusal in plain words: what, which thing, and the way out. */
export const ProblemNotice = ({ error, onRetry, children }: Props) => {
  const t = useMessages(kitMessages);
  if (error === undefined || error === null) return null;
  const retry =
    onRetry === undefined ? null : (
      <Button variant="default" onClick={onRetry}>
        {t('tryAgain')}
      </Button>
    );
  if (error instanceof UnreachableError) {
    return (
      <div className="problem problem-soft" role="status">
        <p>{t('unreachable')}</p>
        {retry}
      </div>
    );
  }
  const problem = error instanceof ProblemError ? error.problem : undefined;
  return (
    <div className="problem" role="alert">
      <p className="problem-title">{problem === undefined ? t('unexpected') : problem.title}</p>
      <p>
        {problem?.detail ??
          (error instanceof Error && problem === undefined ? error.message : null)}
      </p>
      {problem?.errors !== undefined && problem.errors.length > 0 && (
        <ul>
          {problem.errors.map(({ pointer, message }) => (
            <li key={pointer + message}>
              {pointer !== '' && <code>{pointer.replace(/^#?\//, '').replaceAll('/', ' › ')}</code>}{' '}
              {message}
            </li>
          ))}
        </ul>
      )}
      {children}
      {retry}
    </div>
  );
};
