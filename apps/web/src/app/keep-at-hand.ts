import { useQueryClient } from '@tanstack/react-query';
import { useRouter } from '@tanstack/react-router';
import { useEffect } from 'react';

/** Screens of the bench: they open without a connection once the app was opened with one. */
const BENCH = [
  { to: '/' },
  { to: '/waiting' },
  { to: '/found' },
  { to: '/goods-in' },
  { to: '/goods-in/new' },
  { to: '/store' },
  { to: '/store/count' },
  { to: '/store/lots/$code', params: { code: 'any' } },
  { to: '/kitchen' },
  { to: '/kitchen/new' },
  { to: '/kitchen/batches/$id', params: { id: 'any' } },
  { to: '/moulding' },
  { to: '/moulding/new' },
  { to: '/moulding/batches/$id', params: { id: 'any' } },
  { to: '/moulding/tanks' },
  { to: '/packing' },
  { to: '/packing/new' },
  { to: '/packing/batches/$id', params: { id: 'any' } },
  { to: '/out' },
  { to: '/out/new' },
  { to: '/diary' },
] as const;

const PARTS = [
  () => import('../shared/readings/reading-dialogs'),
  () => import('../features/access/switch-person'),
  () => import('../features/access/sign-in'),
  () => import('../shared/scan/camera'),
];

const idle = (): Promise<void> =>
  new Promise((resolve) => {
    // Not every browser has it.
    if (typeof requestIdleCallback === 'function') requestIdleCallback(() => resolve());
    else setTimeout(resolve, 200);
  });

/** Waits until the worker that answers without a connection stands behind this page. */
const workerIsThere = async (): Promise<void> => {
  const { serviceWorker } = navigator;
  if (serviceWorker.controller !== null) return;
  await new Promise((resolve) => {
    serviceWorker.addEventListener('controllerchange', resolve, { once: true });
  });
};

/** What the browser has fetched of the app itself, the worker's doing or not. */
const fetchedOfApp = (): readonly string[] => [
  '/',
  ...performance
    .getEntriesByType('resource')
    .map(({ name }) => new URL(name))
    .filter(({ origin, pathname }) => origin === location.origin && pathname.startsWith('/assets/'))
    .map(({ pathname }) => pathname),
];

/**
 * Brings the code of the bench onto the device while nobody waits for anything. On the very first
 * visit the worker comes after the first answers, so they are asked for once more, through it.
 */
export const useKeptAtHand = (): void => {
  const router = useRouter();
  const queries = useQueryClient();
  useEffect(() => {
    if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return;
    const keep = async (): Promise<void> => {
      await workerIsThere();
      for (const place of BENCH) {
        await idle();
        await router.preloadRoute(place);
      }
      for (const part of PARTS) {
        await idle();
        await part();
      }
      if ((await caches.match('/api/session')) === undefined) await queries.invalidateQueries();
      navigator.serviceWorker.controller?.postMessage({ keep: fetchedOfApp() });
    };
    // Whatever fails here is tried again at the next visit; nothing on screen hangs on it.
    void keep().catch(() => undefined);
  }, [router, queries]);
};
