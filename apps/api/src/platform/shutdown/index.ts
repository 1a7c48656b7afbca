export { atShutdown, shutDown } from './shutdown';
