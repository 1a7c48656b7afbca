import { NestFactory } from '@nestjs/core';
import type { NestExpressApplication } from '@nestjs/platform-express';
import { Logger } from 'nestjs-pino';
import { AppModule } from './app.module';
import { serveOpenApi, setUpApp } from './app.setup';
import type { Config } from './platform/config/config';
import { connect } from './platform/database/prisma';

/** The service on a migrated database, not yet listening. Used by `main.ts`, tests and tools. */
export const createApp = async (
  config: Config,
  databaseUrl: string,
): Promise<NestExpressApplication> => {
  const app = await NestFactory.create<NestExpressApplication>(
    AppModule.with(config, connect(databaseUrl)),
    { bufferLogs: true, abortOnError: false },
  );
  app.useLogger(app.get(Logger));
  setUpApp(app);
  serveOpenApi(app);
  return app;
};
