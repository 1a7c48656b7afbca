import { missingOf } from '../../domain/making';
import { sum } from '../../domain/units';
import { quantityText } from '../../platform/database/decimals';
import { Choice, Flag, Id, ListOf, Quantity, Text, Whole } from '../../platform/dto';
import { BATCH_STATES } from './batch-choices';
import type { StoredPart } from './parts.queries';

export class BatchPartView {
  @Id()
  id: string;

  @Text()
  code: string;

  @Choice(BATCH_STATES)
  state: string;

  @Quantity({ nullable: true })
  plannedQuantity: string | null;

  @Quantity({ description: 'Product that came out, without what was taken back' })
  madeQuantity: string;

  @Flag({ description: 'A lot that it made is on hold' })
  held: boolean;
}

/** Where a batch stands among those of its making. */
export class PlaceInMakingView {
  @Whole({ description: 'Which of the parts it is, from 1; the head is the first' })
  number: number;

  @Whole({ description: 'How many there are, the head included' })
  count: number;
}

export class BatchPartsView {
  @Id({ description: 'The batch that the making began with; parts are opened there' })
  headId: string;

  @Quantity({ nullable: true, description: 'What they were to make together' })
  plannedQuantity: string | null;

  @Quantity({ description: 'What they made together so far' })
  madeQuantity: string;

  @Quantity({ nullable: true, description: 'Planned, and no part gives it any more' })
  missingQuantity: string | null;

  @ListOf(() => BatchPartView, { description: 'The head first, then as they were opened' })
  parts: BatchPartView[];
}

/** @returns null for a batch that is made in one */
export const partsView = (parts: readonly StoredPart[]): BatchPartsView | null => {
  const [head, ...others] = parts;
  if (head === undefined || others.length === 0) return null;
  const { whole } = head;
  return {
    headId: head.id,
    plannedQuantity: whole === null ? null : quantityText(whole),
    madeQuantity: quantityText(sum(parts.map(({ made }) => made))),
    missingQuantity: whole === null ? null : quantityText(missingOf(whole, parts)),
    parts: parts.map(({ id, code, state, planned, made, held }) => ({
      id,
      code,
      state,
      plannedQuantity: planned === null ? null : quantityText(planned),
      madeQuantity: quantityText(made),
      held,
    })),
  };
};
