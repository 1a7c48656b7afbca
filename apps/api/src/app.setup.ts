import type { NestExpressApplication } from '@nestjs/platform-express';
import { DocumentBuilder, type OpenAPIObject, SwaggerModule } from '@nestjs/swagger';
import { Reflector } from '@nestjs/core';
import cookieParser from 'cookie-parser';
import type { NextFunction, Request, Response } from 'express';
import helmet from 'helmet';
import { IdempotencyInterceptor } from './platform/idempotency/idempotency.interceptor';
import { LanguageInterceptor } from './platform/language/language.interceptor';
import { followRequest } from './platform/long-work/long-work';
import { toOpenApi31 } from './platform/openapi/openapi-31';
import { Problem, ProblemFilter, validationPipe } from './platform/problems';
import { serveWebApp } from './platform/web/serve-web-app';
import { withRequestContext } from './platform/requests/request-context';

const BODY_LIMIT = '2mb';

const contentSecurity = {
  contentSecurityPolicy: {
    directives: {
      defaultSrc: ["'self'"],
      imgSrc: ["'self'", 'data:', 'blob:'],
      frameSrc: ["'self'", 'blob:'],
      objectSrc: ["'self'", 'blob:'],
      scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
      styleSrc: ["'self'", "'unsafe-inline'"],
      // The service itself speaks plain HTTP inside a shop; TLS belongs to the proxy before it.
      upgradeInsecureRequests: null,
    },
  },
  strictTransportSecurity: false,
} as const;

/** Pipes, filter, security headers and request context: the same in `main.ts` and in tests. */
export const setUpApp = (app: NestExpressApplication): void => {
  app.setGlobalPrefix('api');
  // Answers say themselves what they are a version of; nobody asks for one by its fingerprint.
  app.disable('etag');
  app.use(helmet(contentSecurity));
  serveWebApp(app);
  app.use(cookieParser());
  app.useBodyParser('json', { limit: BODY_LIMIT });
  app.use((request: Request, response: Response, next: NextFunction) => {
    withRequestContext(undefined, () => {
      followRequest(request, response);
      next();
    });
  });
  app.useGlobalPipes(validationPipe());
  app.useGlobalFilters(new ProblemFilter());
  app.useGlobalInterceptors(
    new LanguageInterceptor(),
    new IdempotencyInterceptor(app.get(Reflector)),
  );
};

export const openApiDocument = (app: NestExpressApplication): OpenAPIObject => {
  const config = new DocumentBuilder()
    .setTitle('Ballotin')
    .setDescription(
      'Production and traceability of a small chocolate workshop. Weights and money are decimal ' +
        'strings, days are YYYY-MM-DD, failures are application/problem+json (RFC 9457).',
    )
    .setVersion('1')
    .addBearerAuth()
    .addCookieAuth('ballotin_session')
    .build();
  return toOpenApi31(SwaggerModule.createDocument(app, config, { extraModels: [Problem] }));
};

/** Serves the document at /api/openapi.json and a page to read it at /api/docs. */
export const serveOpenApi = (app: NestExpressApplication): void => {
  // Made at the first request: it takes a tenth of the start otherwise.
  SwaggerModule.setup('api/docs', app, () => openApiDocument(app), {
    jsonDocumentUrl: 'api/openapi.json',
  });
};
