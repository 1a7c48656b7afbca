// `npm run build`: the database client, the compiled service and the web app.
import { prepare } from './prepare.mjs';
import { failPlainly } from './run.mjs';

await prepare().catch(failPlainly);
