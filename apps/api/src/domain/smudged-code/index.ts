export { smudgedCodeMatches, type CodeMatch } from './smudged-code';
