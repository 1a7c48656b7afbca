import { Injectable } from '@nestjs/common';
import { allergenMatrix, paperLanguage, type AllergenMatrixView } from '../../documents';
import { counterPresence } from '../../domain/allergens';
import type { MarketCode } from '../../domain/label';
import { MARKETS } from '../../domain/market';
import { allergenName } from '../../domain/words';
import type { Tx } from '../../platform/database/prisma';
import { Clock } from '../../platform/clock/clock';
import { Transactions } from '../../platform/database/transactions';
import { currentActor } from '../../platform/requests/request-context';
import { loadWorkshop } from '../workshop';
import { specificationsBehind } from './behind.queries';
import type { MatrixQuery } from './reports.dto';

/** Lots of loose pieces on hand, by item: what a customer at the counter may be given today. */
const piecesOnHand = async (tx: Tx): Promise<Map<string, { name: string; lotIds: string[] }>> => {
  const lots = await tx.lot.findMany({
    where: { item: { kind: 'piece' }, onHandQuantity: { gt: 0 }, refused: false },
    include: { item: true },
    orderBy: { item: { name: 'asc' } },
  });
  const pieces = new Map<string, { name: string; lotIds: string[] }>();
  for (const lot of lots) {
    const before = pieces.get(lot.itemId)?.lotIds ?? [];
    pieces.set(lot.itemId, { name: lot.item.name, lotIds: [...before, lot.id] });
  }
  return pieces;
};

/** Loose pieces against allergens, for the counter: the worst of all lots that lie there. */
@Injectable()
export class CounterMatrixService {
  constructor(
    private readonly transactions: Transactions,
    private readonly clock: Clock,
  ) {}

  pdf(query: MatrixQuery): Promise<Buffer> {
    return this.transactions.read(async (tx) => {
      const workshop = await loadWorkshop(tx);
      const market = MARKETS[(query.market ?? workshop.market) as MarketCode];
      const language = paperLanguage(query.language ? [query.language] : workshop.languages);
      const rows: AllergenMatrixView['rows'][number][] = [];
      for (const { name, lotIds } of (await piecesOnHand(tx)).values()) {
        const presence = counterPresence(await specificationsBehind(tx, lotIds), market);
        rows.push({ name, presence });
      }
      const view: AllergenMatrixView = {
        day: this.transactions.today().toString(),
        allergens: market.allergens.map((code) => ({ code, name: allergenName(code, language) })),
        rows,
      };
      return allergenMatrix(view, {
        language,
        workshop,
        timeZone: workshop.timeZone,
        page: query.page === 'LETTER' ? 'LETTER' : 'A4',
        createdAt: this.clock.now(),
        printedBy: currentActor().userName,
      });
    });
  }
}
