import type { Temporal } from 'temporal-polyfill';
import { checkUsable } from '../../domain/stock';
import type { Tx } from '../../platform/database/prisma';
import type { Role } from '../../platform/requests/request-context';
import { loadLotsForUse, type LotForUse } from '../stock';
import { actionsFor, type Wanted } from './actions';
import type { ScanView } from './scan.dto';
import { say } from '../../domain/words/say';

const whyNotUsed = (lot: LotForUse, today: Temporal.PlainDate): string | null => {
  const usable = checkUsable(lot, today);
  if (!usable.ok) return usable.refusal.detail;
  return lot.onHand.quantity.isZero() ? say`Nothing is left of lot ${lot.code}.` : null;
};

const wanted = (lot: LotForUse, inTank: string | null, today: Temporal.PlainDate): Wanted[] => {
  const why = whyNotUsed(lot, today);
  const empty = lot.onHand.quantity.isZero() ? say`Nothing is left of lot ${lot.code}.` : null;
  const isSold = lot.itemKind === 'box' || lot.itemKind === 'piece';
  const held = lot.holds.length > 0;
  return [
    ['open', null],
    ['trace', null],
    ...(lot.itemKind === 'box' ? [] : [['draw', why] as const]),
    ...(isSold
      ? ([
          ['dispatch', why],
          ['label', why],
        ] as const)
      : []),
    ['hold', held ? say`It is on hold already.` : null],
    ...(held ? [['release', null] as const] : []),
    ['adjust', empty],
    ['move', inTank === null ? empty : say`It is in ${inTank}.`],
    ['tag', null],
    ['recall', null],
    ...(isSold ? [['complain', null] as const] : []),
  ];
};

const warningOf = (lot: LotForUse, today: Temporal.PlainDate): string | null => {
  const [reason] = lot.holds;
  if (reason !== undefined) return say`On hold: ${reason}`;
  return whyNotUsed(lot, today);
};

/** A lot by its code, with what can be done with it now; undefined when there is none. */
export const foundLot = async (
  tx: Tx,
  code: string,
  at: { readonly today: Temporal.PlainDate; readonly role: Role },
): Promise<ScanView | undefined> => {
  const lot = (await loadLotsForUse(tx, [code])).get(code);
  if (lot === undefined) return undefined;
  const row = await tx.lot.findUnique({ where: { id: lot.id }, include: { place: true } });
  const tank = await tx.tank.findUnique({ where: { currentLotId: lot.id } });
  return {
    kind: 'lot',
    code,
    id: lot.id,
    title: lot.itemName,
    warning: warningOf(lot, at.today),
    actions: actionsFor(wanted(lot, tank?.name ?? null, at.today), at.role),
    lots: [
      {
        code,
        itemName: lot.itemName,
        onHandQuantity: lot.onHand.quantity.toFixed(3),
        unit: lot.unit,
        placeName: row?.place?.name ?? null,
        onHold: lot.holds.length > 0,
      },
    ],
    goodsIn: null,
  };
};
