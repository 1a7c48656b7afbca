import { Button } from '@mantine/core';
import { useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { api, must } from '../../api/client';
import { useMessages } from '../../shared/language/catalogue';
import { i18n, speak } from '../../shared/language/i18n';
import { TextField } from '../../shared/kit/fields';
import { Page } from '../../shared/kit/page';
import { ProblemNotice } from '../../shared/kit/problem-notice';
import { accessMessages } from './messages';

const SignIn = () => {
  const t = useMessages(accessMessages);
  const queries = useQueryClient();
  const [name, setName] = useState('');
  const [password, setPassword] = useState('');
  const [error, setError] = useState<unknown>();
  const [working, setWorking] = useState(false);
  const go = async (): Promise<void> => {
    setWorking(true);
    setError(undefined);
    try {
      const session = await must(api.POST('/api/session', { body: { name, password } }));
      // The shell watches the session: that query has to stay and be told, not be taken away.
      queries.removeQueries({ predicate: ({ queryKey }) => queryKey[0] !== '/api/session' });
      queries.setQueryData(['/api/session', null], session);
    } catch (cause) {
      setError(cause);
      setWorking(false);
    }
  };
  const other = i18n.language === 'fr' ? 'en' : 'fr';
  return (
    <main className="shell narrow door">
      <Page title={t('signIn')} lead={t('welcome')}>
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
            autoComplete="username"
            required
          />
          <TextField
            label={t('password')}
            type="password"
            value={password}
            onChange={setPassword}
            autoComplete="current-password"
            required
          />
          <ProblemNotice error={error} />
          <div className="row">
            <Button type="submit" loading={working} disabled={name === '' || password === ''}>
              {t('signIn')}
            </Button>
            <button type="button" className="link" lang={other} onClick={() => void speak(other)}>
              {t('language')}
            </button>
          </div>
        </form>
      </Page>
    </main>
  );
};

export default SignIn;
