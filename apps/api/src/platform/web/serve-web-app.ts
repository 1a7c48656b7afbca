import { existsSync } from 'node:fs';
import { join } from 'node:path';
import compression from 'compression';
import type { NextFunction, Request, Response } from 'express';
import { Router, static as serveFiles } from 'express';
import type { NestExpressApplication } from '@nestjs/platform-express';
import { repositoryRoot } from '../config/config';

const YEAR_S = 31_536_000;

const isApi = ({ path }: Request): boolean => path === '/api' || path.startsWith('/api/');

/** Anything a browser opens that is no file is a screen of the web app. */
const isScreen = (request: Request): boolean =>
  request.method === 'GET' && request.accepts('html') !== false;

/**
 * Serves the built web app at `/`, when it was built. Its files carry a hash in their names and are
 * kept by browsers; the page itself is asked for anew each time.
 */
export const serveWebApp = (app: NestExpressApplication): void => {
  const folder = join(repositoryRoot, 'apps', 'web', 'dist');
  const page = join(folder, 'index.html');
  if (!existsSync(page)) return;
  const web = Router();
  web.use(compression());
  web.use(
    '/assets',
    serveFiles(join(folder, 'assets'), { immutable: true, maxAge: YEAR_S * 1000 }),
  );
  web.use(serveFiles(folder, { index: false, maxAge: 0 }));
  web.use((request: Request, response: Response, next: NextFunction) => {
    if (!isScreen(request)) {
      next();
      return;
    }
    response.header('Cache-Control', 'no-cache').sendFile(page);
  });
  // No request to the API is looked for among the files.
  app.use((request: Request, response: Response, next: NextFunction) => {
    if (isApi(request)) next();
    else web(request, response, next);
  });
};
