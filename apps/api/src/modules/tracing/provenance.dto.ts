import { Choice, DecimalText, Flag, Grams, Instant, ListOf, Text, Texts } from '../../platform/dto';

export class ContributionView {
  @Text()
  lot: string;

  @Text()
  itemName: string;

  @Flag({ description: 'Received from a supplier, not made here' })
  received: boolean;

  @Text({ nullable: true })
  supplier: string | null;

  @Text({ nullable: true })
  supplierLotCode: string | null;

  @Grams({ description: 'Inside the lot, after losses took their share' })
  massGrams: string;

  @Grams({ description: 'What went in for it, undiluted by steam: the order of a label' })
  ingoingGrams: string;

  @DecimalText({ places: 9, description: 'Part of the lot, 0–1' })
  massRatio: string;

  @Grams({ nullable: true, description: 'Received lots only: these parts sum to the whole' })
  printedGrams: string | null;
}

export class ProvenanceView {
  @Text()
  lot: string;

  @Grams()
  massGrams: string;

  @ListOf(() => ContributionView, { description: 'Largest first' })
  contributions: ContributionView[];
}

export class BalanceLineView {
  @Text()
  kind: string;

  @Text({ nullable: true })
  note: string | null;

  @DecimalText({ negative: true, description: 'Grams, or pieces of packaging; see unit' })
  quantity: string;

  @DecimalText({ places: 2, negative: true })
  percent: string;
}

const STATES = [
  'balanced',
  'difference-named',
  'difference-unexplained',
  'more-out-than-in',
] as const;

export class BalanceView {
  @Text()
  lot: string;

  @Instant()
  askedAt: string;

  @Choice(['g', 'pc'], { description: 'Pieces for packaging, which has no weight of food' })
  unit: 'g' | 'pc';

  @Choice(STATES)
  state: (typeof STATES)[number];

  @DecimalText({ description: 'Received or made, with later gains' })
  sourceQuantity: string;

  @DecimalText({ negative: true })
  unexplainedQuantity: string;

  @DecimalText({ places: 2 })
  accountedPercent: string;

  @ListOf(() => BalanceLineView)
  sources: BalanceLineView[];

  @ListOf(() => BalanceLineView)
  ends: BalanceLineView[];

  @ListOf(() => BalanceLineView, { description: 'Differences that have a name' })
  named: BalanceLineView[];

  @Texts({ description: 'Lots that gave out more than they held' })
  overdrawn: string[];
}
