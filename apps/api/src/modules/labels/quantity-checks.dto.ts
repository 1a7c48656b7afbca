import {
  Choice,
  DecimalText,
  Flag,
  Grams,
  Id,
  Instant,
  Text,
  Texts,
  Whole,
} from '../../platform/dto';

export class WeighPacksDto {
  @Grams({ positive: true, description: 'Nominal net weight of one pack' })
  nominalGrams: string;

  @Whole({ min: 1, max: 10_000, description: 'Packs in the batch' })
  batchSize: number;

  @Flag({ description: 'The packs were opened to be weighed' })
  destructive: boolean;

  @Texts({ max: 14, maxItems: 160, description: 'Net weights in grams, in the order weighed' })
  netWeightsGrams: string[];
}

export class QuantityCheckView {
  @Id()
  id: string;

  @Text()
  lotCode: string;

  @Choice(['accepted', 'rejected', 'weigh_more', 'not_judged'])
  state: string;

  @Texts()
  reasons: string[];

  @Whole({ description: 'Packs still to be weighed before there is a verdict' })
  more: number;

  @Grams()
  nominalGrams: string;

  @Grams({ nullable: true })
  toleratedErrorGrams: string | null;

  @Whole()
  weighed: number;

  @Grams({ nullable: true })
  meanGrams: string | null;

  @DecimalText({ nullable: true, description: 'Standard deviation, n − 1' })
  deviationGrams: string | null;

  @Whole()
  belowT1: number;

  @Whole()
  belowT2: number;

  @Text()
  weighedBy: string;

  @Instant()
  at: string;
}
