import { Injectable } from '@nestjs/common';
import { checkReturn } from '../../domain/dispatch';
import { checkQuantity, shareOf, type StockShare } from '../../domain/stock';
import { Decimal, ZERO } from '../../domain/units';
import type { Prisma } from '../../generated/prisma/client';
import { decimalFromDb, decimalToDb } from '../../platform/database/decimals';
import { type By, Transactions } from '../../platform/database/transactions';
import { newId } from '../../platform/ids/new-id';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, orRefuse } from '../../platform/problems';
import { refuseTwice } from './each-lot-once';
import type { ReturnDto, ReturnLineDto } from './dispatches.dto';
import type { DispatchView } from './dispatches.view';
import {
  type DispatchRow,
  findDispatch,
  returnedByLine,
  showDispatch,
} from './dispatches.repository';
import { say } from '../../domain/words/say';

type Line = DispatchRow['lines'][number];

/** What is still out of a line, with its weight and cost: the last return takes the rest. */
const stillOut = (line: Line, returned: StockShare | undefined): StockShare => ({
  quantity: decimalFromDb(line.quantity).minus(returned?.quantity ?? ZERO),
  massG: decimalFromDb(line.massG).minus(returned?.massG ?? ZERO),
  cost: decimalFromDb(line.cost).minus(returned?.cost ?? ZERO),
});

const movement = (
  by: By,
  line: Line,
  share: StockShare,
  rest: { readonly kind: 'returned' | 'wasted'; readonly reason: string; readonly eventId: string },
): Prisma.MovementCreateManyInput => ({
  id: newId(),
  lotId: line.lotId,
  quantity: decimalToDb(share.quantity),
  massG: decimalToDb(share.massG),
  cost: decimalToDb(share.cost),
  dispatchLineId: rest.kind === 'returned' ? line.id : null,
  at: by.at,
  userId: by.userId,
  ...rest,
});

const negated = (share: StockShare): StockShare => ({
  quantity: share.quantity.negated(),
  massG: share.massG.negated(),
  cost: share.cost.negated(),
});

@Injectable()
export class ReturnsService {
  constructor(private readonly transactions: Transactions) {}

  /** Books back what a customer returned: onto the shelf, or in and straight out as waste. */
  book(dispatchId: string, dto: ReturnDto): Promise<DispatchView> {
    return this.transactions.book(async (tx, by) => {
      const dispatch = await findDispatch(tx, dispatchId);
      const before = await returnedByLine(
        tx,
        dispatch.lines.map(({ id }) => id),
      );
      refuseTwice(dto.lines.map(({ lotCode }) => lotCode));
      const eventId = newId();
      const movements = dto.lines.flatMap((returned) =>
        this.movementsOf(by, dispatch, before, returned, dto.reason, eventId),
      );
      await tx.movement.createMany({ data: movements });
      noteInJournal(by, {
        action: 'dispatch.returned',
        subjectKind: 'dispatch',
        subjectId: dispatch.code,
        detail: {
          reason: dto.reason,
          lines: dto.lines.map(({ lotCode, quantity, outcome }) => ({
            lotCode,
            quantity,
            outcome,
          })),
        },
      });
      return showDispatch(tx, dispatchId);
    });
  }

  private movementsOf(
    by: By,
    dispatch: DispatchRow,
    before: ReadonlyMap<string, StockShare>,
    dto: ReturnLineDto,
    reason: string,
    eventId: string,
  ): Prisma.MovementCreateManyInput[] {
    const found = dispatch.lines.find(({ lot }) => lot.code === dto.lotCode);
    const line = orNotFound(found, say`lot on dispatch ${dispatch.code}`, dto.lotCode);
    const unit = line.lot.unit === 'pc' ? 'pc' : 'g';
    const asked = checkQuantity(say`lot ${dto.lotCode}`, unit, new Decimal(dto.quantity));
    const out = stillOut(line, before.get(line.id));
    const quantity = orRefuse(checkReturn(dto.lotCode, out.quantity, orRefuse(asked)));
    const share = shareOf(out, quantity);
    const back = movement(by, line, share, { kind: 'returned', reason, eventId });
    if (dto.outcome === 'restocked') return [back];
    return [back, movement(by, line, negated(share), { kind: 'wasted', reason, eventId })];
  }
}
