import { Injectable } from '@nestjs/common';
import { printLabels } from '../../documents';
import { blocking, type LabelContent } from '../../domain/label';
import type { LabelStock } from '../../domain/printing';
import type { Tx } from '../../platform/database/prisma';
import { type By, Transactions } from '../../platform/database/transactions';
import { writeJournal } from '../../platform/journal/journal';
import { orNotFound, orRefuse, RefusalError } from '../../platform/problems';
import { composeForLot, type LotLabel } from './compose-for-lot';
import { namesOf } from './contact-decisions.queries';
import { findingView } from './declarations.view';
import { workshopSettings } from './label-settings';
import { keepRun, labelRunView, pdfOfRun, runsOf } from './label-runs.repository';
import type { LabelRunView, PrintLabelsDto } from './label-runs.dto';
import { drawLegendCard } from './legend-card';
import { priceMark } from './price-mark';
import { labelSymbols } from './symbols';

/** Until the workshop has said what it prints on: a roll that holds a long list. */
const USUAL_STOCK: LabelStock = { kind: 'roll', widthMm: 100, marginMm: 3 };

/** Prepacked for direct sale asks for the name and the list of ingredients, nothing more. */
const DIRECT_SALE_BLOCKS = ['name', 'ingredients', 'contains', 'precaution'];

const directSale = (content: LabelContent): LabelContent => ({
  ...content,
  blocks: content.blocks.filter((block) => DIRECT_SALE_BLOCKS.includes(block.kind)),
  quantity: null,
  nutrition: [],
});

const keptBack = (label: LotLabel, accepted: ReadonlySet<string>): RefusalError => {
  const open = blocking(label.findings, accepted);
  return new RefusalError({
    code: 'label-kept-back',
    detail: open.map((finding) => finding.detail).join(' '),
    facts: { lotCode: label.lot.code, findings: open.map(findingView) },
  });
};

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

  print(lotCode: string, dto: PrintLabelsDto): Promise<LabelRunView> {
    return this.transactions.book(async (tx, by) => {
      const accepted = new Set((dto.accepted ?? []).map(({ code }) => code));
      const label = await composeForLot(tx, lotCode, by.today, {
        market: dto.market,
        languages: dto.languages,
        price: await priceMark(tx, lotCode, dto.price),
        accepted,
      });
      if (!label.content) throw keptBack(label, accepted);
      const run = await keepRun(tx, by, {
        lotId: label.lot.id,
        form: dto.form,
        market: label.ask.market.code,
        languages: label.ask.languages,
        copies: dto.copies,
        accepted: dto.accepted ?? [],
        ...(await this.draw(tx, by, label, label.content, dto)),
      });
      await writeJournal(tx, by, {
        action: 'labels.printed',
        subjectKind: 'lot',
        subjectId: lotCode,
        detail: { form: dto.form, copies: dto.copies, sha256: run.pdfSha256 },
      });
      return labelRunView(run, by.userName);
    });
  }

  private async draw(
    tx: Tx,
    by: By,
    label: LotLabel,
    composed: LabelContent,
    dto: PrintLabelsDto,
  ): Promise<{ content: object; pdf: Buffer }> {
    if (dto.form === 'legend_card') return drawLegendCard(tx, by, label, dto);
    const content = dto.form === 'direct_sale_label' ? directSale(composed) : composed;
    const stock = (dto.stock ??
      workshopSettings(label.workshop).stock ??
      USUAL_STOCK) as LabelStock;
    const symbols = labelSymbols(label.settings.symbol, label.lot.item.gtin, content);
    const head = {
      title: `${label.lot.item.name} ${content.lotMark}`,
      language: content.languages[0] ?? 'en',
      author: label.workshop.name,
      createdAt: by.at,
    };
    const printed = await printLabels([{ content, symbols, copies: dto.copies }], stock, head);
    const { pdf, xHeightsMm } = orRefuse(printed);
    return { content: { content, stock, symbols, xHeightMm: xHeightsMm[0] }, pdf };
  }
}
