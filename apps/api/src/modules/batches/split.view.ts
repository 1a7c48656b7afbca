import { Id, ListOf, Texts, Whole } from '../../platform/dto';

export class SplitQuery {
  @Whole({ min: 1, max: 100_000, fromQuery: true, description: 'Boxes that were packed' })
  boxes: number;
}

export class SplitDto {
  @Whole({ min: 1, max: 100_000, description: 'Boxes that were packed' })
  boxes: number;
}

export class BoxRunView {
  @Whole()
  firstBox: number;

  @Whole()
  lastBox: number;

  @Whole()
  boxes: number;

  @Texts({ description: 'The lots whose pieces are in these boxes' })
  lotCodes: string[];

  @Id({ nullable: true, description: 'The batch in which they are finished; null in a proposal' })
  batchId: string | null;
}

export class SplitView {
  @Whole()
  boxes: number;

  @ListOf(() => BoxRunView)
  runs: BoxRunView[];
}
