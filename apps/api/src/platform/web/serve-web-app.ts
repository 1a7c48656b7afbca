import { existsSync } from 'node:fs';
import { join } from 'node:path';
import compression from 'compression';
import type { NextFunction, Request, Response } from 'express';
import { static as serveFiles } from 'express';
import type { NestExpressApplication } from '@nestjs/platform-express';
import { repositoryRoot } from '../config/config';

const YEAR_S = 31_536_000;

/** Anything a browser opens that is no file and no API address is a screen of the web app. */
const isScreen = (request: Request): boolean =>
  request.method === 'GET' &&
  !request.path.startsWith('/api/') &&
  request.path !== '/api' &&
  request.accepts('html') !== false;

/**
 * Serves the built web app at `/`, when it was built. Its files carry a hash in their names and are
 * kept by browsers; the page itself is asked for anew each time.
 */
export const serveWebApp = (app: NestExpressApplication): void => {
  const folder = join(repositoryRoot, 'apps', 'web', 'dist');
  const page = join(folder, 'index.html');
  if (!existsSync(page)) return;
  app.use(compression({ filter: (request) => !request.url.startsWith('/api/') }));
  app.use(
    '/assets',
    serveFiles(join(folder, 'assets'), { immutable: true, maxAge: YEAR_S * 1000 }),
  );
  app.use(serveFiles(folder, { index: false, maxAge: 0 }));
  app.use((request: Request, response: Response, next: NextFunction) => {
    if (!isScreen(request)) {
      next();
      return;
    }
    response.header('Cache-Control', 'no-cache').sendFile(page);
  });
};
