// `npm run verify`: audits the database that the environment names, and says each fault.
import { verifyFromCommandLine } from '../apps/api/src/platform/verify';

void verifyFromCommandLine();
