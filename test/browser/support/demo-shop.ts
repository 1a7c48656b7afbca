import { fillDemo } from '../../../prisma/demo/fill-demo';
import { PEOPLE } from '../../../prisma/demo/workshop';
import { createFilledDatabase } from '../../support/database/test-database';
import { type RunningService, startServiceOn } from '../../support/service/test-service';

export type Role = (typeof PEOPLE)[number]['role'];

export const personOf = (role: Role): (typeof PEOPLE)[number] => {
  const person = PEOPLE.find((one) => one.role === role);
  if (person === undefined) throw new Error(`the demo has no ${role}`);
  return person;
};

/** The service with six weeks of the invented workshop in it. */
export const startDemoShop = async (): Promise<RunningService> => {
  const database = await createFilledDatabase('demo', async (empty) => {
    const service = await startServiceOn({ url: empty.url, drop: () => Promise.resolve() });
    const filled = await fillDemo(service.app);
    await service.close();
    if (!filled) throw new Error('the demo found somebody there already');
  });
  return startServiceOn(database);
};
