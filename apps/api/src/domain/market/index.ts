export { MARKETS, type MarketRules } from './rules';
export type { MarketCode } from '../label/content';
