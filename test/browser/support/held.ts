import type { Page, Request, Route } from 'playwright-core';

export interface Held {
  /** The request that is held, once there is one. */
  readonly request: Promise<Request>;
  /** Lets go of what is held. */
  release(): Promise<void>;
}

/**
 * Holds the first request to a path back in the browser, as a very slow service would. Later ones
 * pass: one that were caught while its holding ends would never get an answer.
 */
export const hold = async (
  page: Page,
  method: string,
  path: RegExp,
  before: (route: Route) => Promise<unknown> = () => Promise.resolve(),
): Promise<Held> => {
  let hear: (request: Request) => void = () => undefined;
  const request = new Promise<Request>((resolve) => {
    hear = resolve;
  });
  let isHeld = false;
  const isMeant = (url: URL): boolean => path.test(url.pathname);
  const handler = async (route: Route): Promise<void> => {
    if (route.request().method() !== method || isHeld) return route.continue();
    isHeld = true;
    await before(route);
    hear(route.request());
  };
  await page.route(isMeant, handler);
  return { request, release: () => page.unroute(isMeant, handler) };
};
