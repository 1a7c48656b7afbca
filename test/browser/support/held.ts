import type { Page, Request, Route } from 'playwright-core';

export interface Held {
  /** The first request that was held, once there is one. */
  readonly request: Promise<Request>;
  /** Lets go of what is held and holds nothing more. */
  release(): Promise<void>;
}

/** Holds requests to a path back in the browser, as a very slow service would. */
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
  const isMeant = (url: URL): boolean => path.test(url.pathname);
  const handler = async (route: Route): Promise<void> => {
    if (route.request().method() !== method) return route.continue();
    await before(route);
    hear(route.request());
  };
  await page.route(isMeant, handler);
  return { request, release: () => page.unroute(isMeant, handler) };
};
