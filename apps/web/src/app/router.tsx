import {
  createRootRoute,
  createRoute,
  createRouter,
  lazyRouteComponent,
  Link,
  Outlet,
} from '@tanstack/react-router';
import { useMessages } from '../shared/language/catalogue';
import { Page } from '../shared/kit/page';
import { type LoadScreen, orLate } from './late-screen';
import { appMessages } from './messages';
import { Shell } from './shell';

type Search = Readonly<Record<string, string | undefined>>;

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

const page = <const P extends string>(path: P, load: LoadScreen) =>
  createRoute({ getParentRoute: () => shell, path, component: lazyRouteComponent(orLate(load)) });

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
    page('/found', () => import('../features/scanning/found')),
    page('/goods-in', () => import('../features/goods-in/goods-in')),
    page('/goods-in/new', () => import('../features/goods-in/take-in')),
    page('/goods-in/buying', () => import('../features/planning/buying')),
    page('/goods-in/$id', () => import('../features/goods-in/delivery')),
    page('/goods-in/items', () => import('../features/items/items')),
    page('/goods-in/items/$id', () => import('../features/items/item')),
    page('/store', () => import('../features/stock/store')),
    page('/store/count', () => import('../features/stock/stocktake')),
    page('/store/lots/$code', () => import('../features/stock/lot')),
    page('/kitchen', () => import('../features/batches/kitchen')),
    page('/kitchen/new', () => import('../features/batches/open-batch')),
    page('/kitchen/batches/$id', () => import('../features/batches/batch')),
    page('/moulding/new', () => import('../features/batches/open-batch')),
    page('/moulding/batches/$id', () => import('../features/batches/batch')),
    page('/moulding', () => import('../features/moulds/moulding')),
    page('/moulding/moulds', () => import('../features/moulds/moulds')),
    page('/moulding/tanks', () => import('../features/tanks/tanks')),
    page('/packing/new', () => import('../features/batches/open-batch')),
    page('/packing/batches/$id', () => import('../features/batches/batch')),
    page('/packing', () => import('../features/packing/packing')),
    page('/packing/labels/$code', () => import('../features/labels/label')),
    page('/out', () => import('../features/dispatch/out')),
    page('/out/new', () => import('../features/dispatch/send')),
    page('/out/orders', () => import('../features/planning/orders')),
    page('/out/plan', () => import('../features/planning/plan')),
    page('/out/plan/settings', () => import('../features/planning/plan-settings')),
    page('/out/forecast', () => import('../features/planning/forecast')),
    page('/trace', () => import('../features/tracing/find')),
    page('/trace/from', () => import('../features/tracing/trace-from')),
    page('/trace/lots/$code', () => import('../features/tracing/lot-trace')),
    page('/trace/moulds/$tag', () => import('../features/tracing/mould-trace')),
    page('/trace/recalls', () => import('../features/recalls/recalls')),
    page('/trace/recalls/new', () => import('../features/recalls/open-recall')),
    page('/trace/recalls/$code', () => import('../features/recalls/recall')),
    page('/trace/recall-sizes', () => import('../features/recalls/recall-sizes')),
    page('/trace/complaints', () => import('../features/complaints/complaints')),
    page('/trace/complaints/$code', () => import('../features/complaints/complaint')),
    page('/recipes', () => import('../features/recipes/recipes')),
    page('/recipes/water-activity', () => import('../features/recipes/water-record')),
    page('/recipes/$id', () => import('../features/recipes/recipe')),
    page('/prices', () => import('../features/pricing/prices')),
    page('/prices/$id', () => import('../features/pricing/price')),
    page('/diary', () => import('../features/diary/diary')),
    page('/workshop', () => import('../features/workshop/settings')),
    page('/workshop/people', () => import('../features/workshop/people')),
    page('/workshop/suppliers', () => import('../features/workshop/suppliers')),
    page('/workshop/customers', () => import('../features/workshop/customers')),
    page('/workshop/places', () => import('../features/workshop/places')),
    page('/workshop/rates', () => import('../features/workshop/rates')),
    page('/workshop/import', () => import('../features/workshop/import')),
    page('/workshop/data', () => import('../features/workshop/data-out')),
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
