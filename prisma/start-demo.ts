// `npm start -- --demo`: the service, with an empty database filled with the invented workshop.
import { startService } from '../apps/api/src/start';
import { fillDemo } from './demo/fill-demo';
import { PEOPLE } from './demo/workshop';

startService({
  fill: async (app) => {
    process.stdout.write('Filling an empty database with the demo workshop …\n');
    if (!(await fillDemo(app))) return ['This database has people already: no demo was added.'];
    return [
      'The demo workshop is there. Its people:',
      ...PEOPLE.map(
        ({ name, role, password, pin }) => `  ${name} (${role}): ${password}, PIN ${pin}`,
      ),
    ];
  },
});
