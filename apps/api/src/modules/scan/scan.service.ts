import { Injectable } from '@nestjs/common';
import { asTypedCode, recogniseScan, type Recognised } from '../../domain/identification';
import type { Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { currentActor, type Role } from '../../platform/requests/request-context';
import { loadWorkshop } from '../workshop';
import { foundGoods, foundProduct } from './found-goods';
import { foundLot } from './found-lot';
import { foundThing, type ThingKind } from './found-things';
import type { ScanView } from './scan.dto';
import { named, say } from '../../domain/words/say';

interface At {
  readonly today: Awaited<ReturnType<Transactions['today']>>;
  readonly role: Role;
}

const THINGS: readonly ThingKind[] = [
  ...(['batch', 'mould', 'tank', 'place'] as const),
  ...(['dispatch', 'complaint', 'recall'] as const),
];

const nothing = (warning: string): ScanView => ({
  kind: 'unknown',
  code: null,
  id: null,
  title: say`Not known here`,
  warning,
  actions: [],
  lots: [],
  goodsIn: null,
});

/** Older codes, and those of another pattern, are found as they stand, in every register. */
const lookEverywhere = async (tx: Tx, text: string, at: At): Promise<ScanView | undefined> => {
  for (const code of new Set([text, text.toUpperCase(), asTypedCode(text)])) {
    const lot = await foundLot(tx, code, at);
    if (lot !== undefined) return lot;
    for (const kind of THINGS) {
      const thing = await foundThing(tx, kind, code, at.role);
      if (thing !== undefined) return thing;
    }
  }
  return undefined;
};

const resolve = async (tx: Tx, read: Recognised, at: At): Promise<ScanView> => {
  switch (read.kind) {
    case 'lot':
      return (
        (await foundLot(tx, read.code, at)) ??
        nothing(
          say`${read.code} reads like a lot of this workshop, but there is none of that code.`,
        )
      );
    case 'box':
      return (
        (await foundLot(tx, read.lotCode, at)) ??
        nothing(say`This is a box of ours, but lot ${read.lotCode} is not on record.`)
      );
    case 'supplier':
      return foundGoods(tx, read.facts, at.role);
    case 'product':
      return foundProduct(tx, read.gtin, at.role);
    case 'till':
      return nothing(say`This is a number of the till: it names a price, not a lot.`);
    case 'unknown':
      return (await lookEverywhere(tx, read.text, at)) ?? nothing(read.said);
    default:
      return (
        (await foundThing(tx, read.kind, read.code, at.role)) ??
        nothing(say`${read.code} reads like a ${named(read.kind)}, but there is none of that code.`)
      );
  }
};

/** What a scanned or typed text stands for, and what can be done with it now. */
@Injectable()
export class ScanService {
  constructor(private readonly transactions: Transactions) {}

  scan(text: string): Promise<ScanView> {
    const { role } = currentActor();
    return this.transactions.read(async (tx) => {
      const workshop = await loadWorkshop(tx);
      const today = this.transactions.today();
      const read = recogniseScan(text, {
        today,
        lotPattern: workshop.codePattern,
        gs1CompanyPrefix: workshop.gs1CompanyPrefix ?? undefined,
      });
      return resolve(tx, read, { today, role });
    });
  }
}
