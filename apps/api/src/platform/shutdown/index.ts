export { drain } from './drain';
export { atShutdown, shutDown } from './shutdown';
