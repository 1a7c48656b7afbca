import { Injectable } from '@nestjs/common';
import { answering } from '../../domain/label';
import { type By, Transactions } from '../../platform/database/transactions';
import type { Tx } from '../../platform/database/prisma';
import { noteInJournal } from '../../platform/journal/journal';
import { orNotFound, RefusalError } from '../../platform/problems';
import { namesOf } from './contact-decisions.queries';
import {
  decisionOf,
  drawPaper,
  planPaper,
  printsTheSame,
  type DrawnPaper,
  type LabelPaper,
} from './label-paper';
import { keepRun, labelRunView, pdfOfRun, runsOf } from './label-runs.repository';
import type { LabelRunView, LabelsDto } from './label-runs.dto';
import { say } from '../../domain/words/say';

interface Drawn extends DrawnPaper {
  readonly paper: LabelPaper;
}

/** Drawn a second time when the lots changed meanwhile; after so many times a person looks. */
const MOST_DRAWINGS = 3;

/** Something that the label says changed between its drawing and its booking. */
class OutOfDate extends Error {}

@Injectable()
export class LabelRunsService {
  constructor(private readonly transactions: Transactions) {}

  list(lotCode: string): Promise<LabelRunView[]> {
    return this.transactions.read(async (tx) => {
      const rows = await runsOf(tx, lotCode);
      const names = await namesOf(tx, [...new Set(rows.map((row) => row.userId))]);
      return rows.map((row) => labelRunView(row, names.get(row.userId) ?? ''));
    });
  }

  /** The bytes that went to the printer, as they were. */
  pdf(lotCode: string, id?: string): Promise<Buffer> {
    return this.transactions.read(async (tx) =>
      orNotFound(await pdfOfRun(tx, lotCode, id), 'label run', id ?? lotCode),
    );
  }

  /** The very bytes that `print` would put on record today for the same wishes; nothing is kept. */
  async preview(lotCode: string, dto: LabelsDto): Promise<Buffer> {
    return (await this.draw(lotCode, dto)).pdf;
  }

  /** Draws outside the transaction, and books only what still holds inside it. */
  async print(lotCode: string, dto: LabelsDto): Promise<LabelRunView> {
    for (let drawing = 1; ; drawing += 1) {
      try {
        return await this.transactions.bookPrepared(
          () => this.draw(lotCode, dto),
          (tx, by, drawn) => this.keep(tx, by, lotCode, dto, drawn),
        );
      } catch (error) {
        if (!(error instanceof OutOfDate)) throw error;
        if (drawing < MOST_DRAWINGS) continue;
        throw new RefusalError({
          code: 'label-kept-back',
          detail: say`Lot ${lotCode} changed while its label was drawn. Look at it and print again.`,
        });
      }
    }
  }

  private async draw(lotCode: string, dto: LabelsDto): Promise<Drawn> {
    const { paper } = await this.transactions.read(async (tx) =>
      planPaper(tx, lotCode, this.transactions.today(), dto),
    );
    return { paper, ...(await drawPaper(paper)) };
  }

  private async keep(
    tx: Tx,
    by: By,
    lotCode: string,
    dto: LabelsDto,
    drawn: Drawn,
  ): Promise<LabelRunView> {
    const { label, paper } = await planPaper(tx, lotCode, by.today, dto);
    if (!printsTheSame(paper, drawn.paper)) throw new OutOfDate();
    const accepted = (dto.accepted ?? []).map((entry) => ({ ...entry, ...decisionOf(entry) }));
    const run = await keepRun(tx, by, {
      lotId: label.lot.id,
      form: dto.form,
      market: label.ask.market.code,
      languages: label.ask.languages,
      copies: dto.copies,
      accepted: answering(accepted, label.findings),
      content: drawn.content,
      pdf: drawn.pdf,
    });
    noteInJournal(by, {
      action: 'labels.printed',
      subjectKind: 'lot',
      subjectId: lotCode,
      detail: { form: dto.form, copies: dto.copies, sha256: run.pdfSha256 },
    });
    return labelRunView(run, by.userName);
  }
}
