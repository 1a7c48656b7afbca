export { verifyFromCommandLine } from './command-line';
export { type Fault, verifyDatabase } from './verify-database';
