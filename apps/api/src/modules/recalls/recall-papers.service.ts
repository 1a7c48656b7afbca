import { Injectable } from '@nestjs/common';
import { recallLetters, recallList, recallNotice, recallReport } from '../../documents';
import { type Tx } from '../../platform/database/prisma';
import { Transactions } from '../../platform/database/transactions';
import { PaperContexts } from '../papers';
import { dateOf, lotsOnPaper, paperOf } from './recall-paper.view';
import type { RecallPaperQuery } from './recall-papers.dto';
import { reportOf } from './recall-report.view';
import type { RecallView } from './recalls.dto';
import { RecallsService } from './recalls.service';

/** What buyers can hold in their hands. */
const SOLD = new Set(['box', 'piece']);

const ADVICE = {
  en: 'Please don’t eat it. Bring it back to us or throw it away: we refund it without a receipt.',
  fr: 'Ne le consommez pas. Rapportez-le ou jetez-le : nous le remboursons sans ticket.',
};

@Injectable()
export class RecallPapersService {
  constructor(
    private readonly transactions: Transactions,
    private readonly contexts: PaperContexts,
    private readonly recalls: RecallsService,
  ) {}

  list(code: string, query: RecallPaperQuery): Promise<Buffer> {
    return this.print(code, query, (view, context) => recallList(paperOf(view), context));
  }

  letters(code: string, query: RecallPaperQuery): Promise<Buffer> {
    return this.print(code, query, (view, context) => recallLetters(paperOf(view), context));
  }

  /** For the door: only goods that buyers can have, in words that a person may set. */
  notice(code: string, query: RecallPaperQuery): Promise<Buffer> {
    return this.print(code, query, (view, context) =>
      recallNotice(
        {
          code: view.code,
          mode: view.mode === 'rehearsal' ? 'rehearsal' : 'real',
          reason: query.reason ?? view.reason,
          advice: query.advice ?? ADVICE[context.language],
          products: lotsOnPaper(view)
            .filter((lot) => SOLD.has(lot.itemKind))
            .map((lot) => ({ itemName: lot.itemName, lotMark: `L${lot.code}`, ...dateOf(lot) })),
        },
        context,
      ),
    );
  }

  /** At the close as it was kept; before it, the figures of now. */
  report(code: string, query: RecallPaperQuery): Promise<Buffer> {
    return this.print(code, query, (view, context) => recallReport(reportOf(view), context));
  }

  private print(
    code: string,
    query: RecallPaperQuery,
    draw: (view: RecallView, context: Awaited<ReturnType<PaperContexts['of']>>) => Promise<Buffer>,
  ): Promise<Buffer> {
    return this.transactions.read(async (tx: Tx) =>
      draw(await this.recalls.view(tx, code), await this.contexts.of(tx, query)),
    );
  }
}
