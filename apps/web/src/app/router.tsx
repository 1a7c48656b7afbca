import {
  createRootRoute,
  createRoute,
  createRouter,
  lazyRouteComponent,
  Link,
  Outlet,
} from '@tanstack/react-router';
import type { ComponentType } from 'react';
import { useMessages } from '../shared/language/catalogue';
import { Page } from '../shared/kit/page';
import { appMessages } from './messages';
import { Shell } from './shell';

type Search = Readonly<Record<string, string | undefined>>;
type Load = () => Promise<{ readonly default: ComponentType }>;

const NoPage = () => {
  const t = useMessages(appMessages);
  return (
    <Page title={t('noPage')}>
      <Link to="/">{t('backToToday')}</Link>
    </Page>
  );
};

const root = createRootRoute({
  component: Outlet,
  notFoundComponent: NoPage,
  validateSearch: (search: Record<string, unknown>): Search => search as Search,
});

const shell = createRoute({ getParentRoute: () => root, id: 'shell', component: Shell });

const page = <const P extends string>(path: P, load: Load) =>
  createRoute({ getParentRoute: () => shell, path, component: lazyRouteComponent(load) });

const firstOwner = createRoute({
  getParentRoute: () => root,
  path: '/first-owner',
  component: lazyRouteComponent(() => import('../features/access/first-owner')),
});

const tree = root.addChildren([
  firstOwner,
  shell.addChildren([
    page('/', () => import('../features/today/today')),
    page('/waiting', () => import('../features/today/waiting-bookings')),
  ]),
]);

export const router = createRouter({
  routeTree: tree,
  defaultPreload: 'intent',
  scrollRestoration: true,
  // Search parameters are plain text: a lot code of digits must not become a number.
  parseSearch: (text) => Object.fromEntries(new URLSearchParams(text)),
  stringifySearch: (search) => {
    const pairs = Object.entries(search as Search).filter(
      (pair): pair is [string, string] => pair[1] !== undefined && pair[1] !== '',
    );
    const text = new URLSearchParams(pairs).toString();
    return text === '' ? '' : `?${text}`;
  },
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
