import { Button } from '@mantine/core';
import { useQueryClient } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { api, must } from '../../api/client';
import { fieldErrors, ProblemError } from '../../api/problem';
import { useSearchText } from '../../app/use-address';
import { useMessages } from '../../shared/language/catalogue';
import { TextField } from '../../shared/kit/fields';
import { Page } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { accessMessages } from './messages';

/** The page behind the one-time link: creates the owner and goes on to the workshop's settings. */
const FirstOwner = () => {
  const t = useMessages(accessMessages);
  const token = useSearchText('token');
  const queries = useQueryClient();
  const navigate = useNavigate();
  const [name, setName] = useState('');
  const [password, setPassword] = useState('');
  const [error, setError] = useState<unknown>();
  const errors = error instanceof ProblemError ? fieldErrors(error.problem) : {};
  const go = async (): Promise<void> => {
    try {
      const body = { token: token ?? '', name, password };
      const session = await must(api.POST('/api/session/first-owner', { body }));
      queries.setQueryData(['/api/session', null], session);
      await navigate({ to: '/workshop' });
    } catch (cause) {
      setError(cause);
    }
  };
  return (
    <main className="shell narrow door">
      <Page title={t('firstTitle')} lead={t('firstLead')}>
        {token === undefined ? (
          <p>{t('noToken')}</p>
        ) : (
          <form
            className="stack"
            onSubmit={(event) => {
              event.preventDefault();
              void go();
            }}
          >
            <TextField
              label={t('name')}
              value={name}
              onChange={setName}
              error={errors['name']}
              autoComplete="username"
              required
            />
            <TextField
              label={t('password')}
              type="password"
              hint={t('passwordHint')}
              value={password}
              onChange={setPassword}
              error={errors['password']}
              autoComplete="new-password"
              required
            />
            <ProblemNotice error={error} />
            <Button type="submit" disabled={name === '' || password.length < 10}>
              {t('create')}
            </Button>
          </form>
        )}
      </Page>
    </main>
  );
};

export default FirstOwner;
