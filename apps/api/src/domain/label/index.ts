export { acceptances, answering, blocking, type Accepted, type Acceptances } from './acceptance';
export type { LabelAsk, LabelSettings, NutritionSettings, Operator } from './ask';
export { composeLabel, type ComposedLabel } from './compose';
export type {
  BlockKind,
  DateMark,
  LabelContent,
  LabelFinding,
  MarketCode,
  NutritionPanel,
  NutritionRow,
  PriceMark,
  QuantityMark,
  TextBlock,
  TextRun,
} from './content';
export { designedMix } from './designed-mix';
export { differences, type Compared } from './differences';
