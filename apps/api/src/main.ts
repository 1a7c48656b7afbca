import { startService } from './start';

startService();
