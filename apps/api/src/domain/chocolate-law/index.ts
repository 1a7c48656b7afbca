export { AMERICAN_CHOCOLATES, type AmericanChocolate } from './american-names';
export { americanFindings, americanNameOf, americanShortfalls, chocolateLiquor } from './cfr-163';
export {
  isMilkKind,
  mayClaimQuality,
  minimumPercent,
  shortfalls,
  statesCocoaSolids,
  totalCocoa,
  type ChocolateFigures,
} from './minimum-contents';
export { nameFindings, vegetableFatFindings } from './name-checks';
export {
  chocolateFigures,
  chocolateG,
  chocolatePercent,
  vegetableFats,
  type LegalName,
} from './product';
