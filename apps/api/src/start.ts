import 'reflect-metadata';
import type { NestExpressApplication } from '@nestjs/platform-express';
import { type Config, readConfig } from './platform/config/config';
import { openDatabase } from './platform/embedded-database';
import { migrate } from './platform/migrations';
import { atShutdown, drain, shutDown } from './platform/shutdown';

const say = (line: string): void => {
  process.stdout.write(`${line}\n`);
};

const invite = async (app: NestExpressApplication, config: Config): Promise<void> => {
  const { FirstOwnerService } = await import('./modules/access');
  const token = await app.get(FirstOwnerService).invite();
  if (token === undefined) return;
  say('');
  say('  Nobody has an account yet. Open this link once to become the owner:');
  say(`  ${config.publicUrl}/first-owner?token=${token}`);
  say('');
};

export interface StartOptions {
  /** Fills an empty database; returns what to tell the person at the terminal. */
  readonly fill?: (app: NestExpressApplication) => Promise<readonly string[]>;
}

/** The service's code loads while the database, once its process runs, comes up by itself. */
const openAndLoad = async (config: Config) => {
  let loading: Promise<typeof import('./app.factory')> | undefined;
  const load = () => (loading ??= import('./app.factory'));
  const database = await openDatabase({ ...config, onStarting: () => void load() });
  return { database, createApp: (await load()).createApp };
};

const start = async ({ fill }: StartOptions): Promise<void> => {
  const config = readConfig(process.env);
  const { database, createApp } = await openAndLoad(config);
  await migrate(database.url);
  const app = await createApp(config, database.url);
  // Drained before the app closes what the requests under way still need.
  atShutdown('the service', async () => {
    await drain(app.getHttpServer());
    await app.close();
  });
  await app.listen(config.port, config.host);
  for (const line of (await fill?.(app)) ?? []) say(line);
  await invite(app, config);
  say(`Ballotin is ready at ${config.publicUrl}`);
};

/** Runs the service until it is told to stop. What keeps it from starting is said in plain words. */
export const startService = (options: StartOptions = {}): void => {
  // What libraries say of their own future is for programmers, not for a shop's terminal.
  process.noDeprecation = true;
  start(options).catch(async (error: unknown) => {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
    process.exitCode = 1;
    await shutDown();
  });
};
