import 'reflect-metadata';
import { createApp } from './app.factory';
import { FirstOwnerService } from './modules/access';
import { type Config, readConfig } from './platform/config/config';
import { openDatabase } from './platform/embedded-database';
import { migrate } from './platform/migrations';
import { atShutdown, shutDown } from './platform/shutdown';

const say = (line: string): void => {
  process.stdout.write(`${line}\n`);
};

const invite = async (owners: FirstOwnerService, config: Config): Promise<void> => {
  const token = await owners.invite();
  if (token === undefined) return;
  say('');
  say('  Nobody has an account yet. Open this link once to become the owner:');
  say(`  ${config.publicUrl}/first-owner?token=${token}`);
  say('');
};

const start = async (): Promise<void> => {
  const config = readConfig(process.env, process.argv.slice(2));
  const database = await openDatabase(config);
  await migrate(database.url);
  const app = await createApp(config, database.url);
  atShutdown('the service', () => app.close());
  await app.listen(config.port, config.host);
  say(`Ballotin is ready at ${config.publicUrl}`);
  await invite(app.get(FirstOwnerService), config);
};

start().catch(async (error: unknown) => {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
  await shutDown();
});
