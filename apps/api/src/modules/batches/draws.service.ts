import { Injectable } from '@nestjs/common';
import { Decimal } from '../../domain/units';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, RefusalError } from '../../platform/problems';
import { loadLotForUse, loadLotForUseById, type LotForUse, takeFromLot } from '../stock';
import { type BatchHead, loadBatchHead, loadDraws, requireOpen } from './batch-head.queries';
import type { DrawDto } from './bench.dto';
import { drawView, type DrawView } from './draw.view';
import { bookDraw, bookReversal } from './bookings.repository';
import { Substitutes } from './substitutes.port';
import { say } from '../../domain/words/say';

/** The lot that is named, or the one that is in the named tank now. */
const lotOf = async (tx: Tx, dto: DrawDto): Promise<LotForUse> => {
  if ((dto.lotCode === undefined) === (dto.tankId === undefined)) {
    throw new RefusalError({
      code: 'not-valid',
      detail: say`Name the lot by its code, or the tank that it is drawn from: one of the two.`,
    });
  }
  if (dto.lotCode !== undefined) return loadLotForUse(tx, dto.lotCode);
  const found = await tx.tank.findUnique({
    where: { id: dto.tankId ?? '' },
    select: { name: true, currentLotId: true },
  });
  const tank = orNotFound(found, 'tank', dto.tankId ?? '');
  if (tank.currentLotId !== null) return loadLotForUseById(tx, tank.currentLotId);
  throw new RefusalError({
    code: 'tank-empty',
    detail: say`Tank ${tank.name} is empty. Charge it first, then draw from it.`,
    facts: { tank: tank.name },
  });
};

/** The role that is stated, or the one that the recipe gives the item. */
const roleOf = (head: BatchHead, lot: LotForUse, dto: DrawDto): string => {
  if (dto.role !== undefined) return dto.role;
  if (head.kind === 'charge') return 'charge';
  const use = head.uses.find(({ itemId }) => itemId === lot.itemId);
  if (use !== undefined) return use.role;
  throw new RefusalError({
    code: 'not-in-recipe',
    detail: say`${lot.itemName} (lot ${lot.code}) is not in the recipe of batch ${head.code}. Take a lot of what the recipe names, or state its role and why it is used instead.`,
    facts: { batchCode: head.code, lotCode: lot.code, item: lot.itemName },
  });
};

/** A tank is meant to hold its own chocolate only; anything else is meant to follow its recipe. */
const isForeign = (head: BatchHead, lot: LotForUse): boolean =>
  head.kind === 'charge'
    ? lot.itemId !== head.chargedItemId
    : !head.uses.some(({ itemId }) => itemId === lot.itemId);

/**
 * Takes a quantity from a lot into a batch. Used at the bench and by corrections. What the recipe
 * names goes in as it is; anything else only when what it changes was accepted.
 */
export const drawIntoBatch = async (
  tx: Tx,
  by: By,
  head: BatchHead,
  dto: DrawDto,
  reason: string | null,
  substitutes: Substitutes,
): Promise<DrawView> => {
  const lot = await lotOf(tx, dto);
  const role = roleOf(head, lot, dto);
  const { quantity } = dto;
  const share = takeFromLot(lot, new Decimal(quantity), by.today);
  if (isForeign(head, lot)) {
    const acceptance = dto.acceptance ?? null;
    await substitutes.requireAccepted(tx, by, { head, lot, quantity, role, reason, acceptance });
  }
  const id = await bookDraw(tx, by, { batchId: head.id, lotId: lot.id, role, share, reason });
  return drawView({ id, lot, role, share, at: by.at, reason });
};

@Injectable()
export class DrawsService {
  constructor(
    private readonly transactions: Transactions,
    private readonly substitutes: Substitutes,
  ) {}

  draw(batchId: string, dto: DrawDto): Promise<DrawView> {
    return this.transactions.book(async (tx, by) => {
      const head = await loadBatchHead(tx, by, batchId);
      requireOpen(head);
      const view = await drawIntoBatch(tx, by, head, dto, dto.reason ?? null, this.substitutes);
      noteInJournal(by, {
        action: 'batch.drawn',
        subjectKind: 'batch',
        subjectId: head.code,
        detail: { lot: view.lotCode, quantity: view.quantity, role: view.role },
      });
      return view;
    });
  }

  /** Puts a draw back, as long as the batch is open. */
  reverse(batchId: string, drawId: string, reason: string): Promise<DrawView> {
    return this.transactions.book(async (tx, by) => {
      const head = await loadBatchHead(tx, by, batchId);
      requireOpen(head);
      const draws = await loadDraws(tx, batchId);
      const draw = reversibleDraw(draws, drawId);
      await bookReversal(tx, by, draw, reason);
      const lot = await loadLotForUseById(tx, draw.lotId);
      noteInJournal(by, {
        action: 'batch.draw-reversed',
        subjectKind: 'batch',
        subjectId: head.code,
        detail: { lot: lot.code, quantity: draw.quantity.toFixed(), reason },
      });
      return {
        ...drawView({ id: draw.id, lot, role: draw.role, share: draw, at: by.at, reason }),
        reversed: true,
      };
    });
  }
}

/** @throws RefusalError when there is no such draw, or it was put back already */
export const reversibleDraw = (
  draws: Awaited<ReturnType<typeof loadDraws>>,
  drawId: string,
): Awaited<ReturnType<typeof loadDraws>>[number] => {
  const found = draws.find(({ id, isReversal }) => id === drawId && !isReversal);
  const draw = orNotFound(found, 'draw of this batch', drawId);
  if (!draw.reversed) return draw;
  throw new RefusalError({
    code: 'already-reversed',
    detail: say`This draw of lot ${draw.lotCode} was put back already. Nothing more to put right.`,
    facts: { lotCode: draw.lotCode, drawId },
  });
};
