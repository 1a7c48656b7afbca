import type { NestExpressApplication } from '@nestjs/platform-express';
import { FirstOwnerService } from '../../apps/api/src/modules/access';
import { Clock } from '../../apps/api/src/platform/clock/clock';
import { Calendar, DemoClient, type Team } from './demo-client';
import { liveSixWeeks } from './history';
import { setLabels } from './label-settings';
import { makeMasterData } from './master-data';
import { planAhead } from './next-weeks';
import { setPrices } from './office';
import { keepFrozen, measureWater, setTemperingCurves, weighBoxes } from './quality';
import { improveRecipes, writeRecipes } from './recipe-versions';
import { tellToday } from './today';
import { PEOPLE } from './workshop';

const DAYS = 42;

const hire = async (origin: string, token: string): Promise<Team> => {
  const [boss, ...others] = PEOPLE;
  const guest = new DemoClient(origin, '');
  await guest.post('/session/first-owner', { token, name: boss.name, password: boss.password });
  const owner = await DemoClient.signIn(origin, boss.name, boss.password);
  const users = await owner.get<{ id: string; name: string; version: number }[]>('/users');
  const self = users.find((user) => user.name === boss.name);
  if (self !== undefined) {
    await owner.change('PATCH', `/users/${self.id}`, self.version, { pin: boss.pin });
  }
  for (const person of others) await owner.post('/users', person);
  const [maker, seller] = await Promise.all(
    (['maker', 'seller'] as const).map((role) => {
      const person = others.find((other) => other.role === role) ?? boss;
      return DemoClient.signIn(origin, person.name, person.password);
    }),
  );
  return { owner, maker: maker ?? owner, seller: seller ?? owner };
};

/**
 * Fills an empty database with the invented workshop, through the running service's own API, with
 * its clock turned back. Does nothing when somebody has an account already.
 * @returns whether it was filled
 */
export const fillDemo = async (app: NestExpressApplication): Promise<boolean> => {
  const clock = app.get(Clock);
  const now = new Date();
  const calendar = new Calendar(clock, now, DAYS);
  try {
    calendar.at(0, 7);
    const token = await app.get(FirstOwnerService).invite();
    if (token === undefined) return false;
    const origin = (await app.getUrl()).replace('[::1]', '127.0.0.1');
    const team = await hire(origin, token);
    const data = await makeMasterData(team);
    await writeRecipes(team.maker, data);
    await setLabels(team.owner, data);
    await setPrices(team, data, calendar);
    await setTemperingCurves(team, data);
    await liveSixWeeks(team, data, calendar);
    await measureWater(team, data, calendar);
    await weighBoxes(team, data, calendar);
    await keepFrozen(team, data, calendar);
    calendar.at(DAYS - 1, 16);
    await improveRecipes(team.maker, data);
    await tellToday(team, data, calendar);
    await planAhead(team, data, calendar);
    return true;
  } finally {
    calendar.backToNow();
  }
};
