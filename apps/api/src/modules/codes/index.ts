export { nextCode, nextTag } from './next-code';
