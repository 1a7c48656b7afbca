import { MantineProvider } from '@mantine/core';
import { onlineManager, QueryCache, QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { ProblemError } from '../api/problem';
import { cssVariables, theme } from '../shared/kit/theme';
import { i18n } from '../shared/language/i18n';
import { router } from './router';

const queries: QueryClient = new QueryClient({
  defaultOptions: {
    queries: {
      staleTime: 5_000,
      // A refusal stays a refusal; only a lost connection is worth another try.
      retry: (times, error) => !(error instanceof ProblemError) && times < 2,
      networkMode: 'always',
      // Else this mode would leave out what waits for the connection.
      refetchOnReconnect: true,
    },
    mutations: { networkMode: 'always' },
  },
  queryCache: new QueryCache({
    onError: (error, query) => {
      const signedOut = error instanceof ProblemError && error.problem.status === 401;
      if (signedOut && query.queryKey[0] !== '/api/session') {
        void queries.resetQueries({ queryKey: ['/api/session'] });
      }
    },
  }),
});

// It believes that there is a connection until one is lost; a page may open without.
onlineManager.setOnline(navigator.onLine);

// What the service told in the language before is asked for again in the new one.
i18n.on('languageChanged', () => void queries.invalidateQueries());

export const App = () => (
  <MantineProvider theme={theme} cssVariablesResolver={cssVariables} forceColorScheme="light">
    <QueryClientProvider client={queries}>
      <RouterProvider router={router} />
    </QueryClientProvider>
  </MantineProvider>
);
