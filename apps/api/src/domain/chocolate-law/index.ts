export {
  isMilkKind,
  mayClaimQuality,
  minimumPercent,
  shortfalls,
  statesCocoaSolids,
  totalCocoa,
  type ChocolateFigures,
} from './minimum-contents';
export {
  chocolateFigures,
  chocolateG,
  chocolatePercent,
  nameFindings,
  vegetableFatFindings,
  vegetableFats,
  type LegalName,
} from './product';
