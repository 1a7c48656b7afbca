import { makeDataFolder } from '../support/database/data-folder';
import { freePort, ServiceProcess } from '../support/service/service-process';

export interface Served {
  readonly origin: string;
  stop(): Promise<void>;
}

/**
 * The service on a database that is there already, as `npm start` runs it: compiled, in a process
 * of its own, so that what is clocked is the service and not the test runner around it.
 */
export const serve = async (databaseUrl: string): Promise<Served> => {
  const folder = makeDataFolder();
  const settings = { DATABASE_URL: databaseUrl };
  const service = new ServiceProcess(folder.path, await freePort(), settings);
  await service.start();
  return {
    origin: service.origin,
    stop: async () => {
      await service.stop();
      folder.remove();
    },
  };
};
