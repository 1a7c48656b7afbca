import { Injectable } from '@nestjs/common';
import { traceReport, type TraceReportView } from '../../documents';
import { Transactions } from '../../platform/database/transactions';
import { TracingService } from '../tracing';
import { PaperContexts } from './paper-context';
import type { PaperQuery } from './papers.dto';
import type { TracePaperQuery, TraceStartPaperQuery } from './trace-papers.dto';
import { traceReportView } from './trace-report.view';

@Injectable()
export class TracePapersService {
  constructor(
    private readonly transactions: Transactions,
    private readonly contexts: PaperContexts,
    private readonly tracing: TracingService,
  ) {}

  async ofLot(code: string, query: TracePaperQuery): Promise<Buffer> {
    const trace = await this.tracing.traceLot(code, query.direction ?? 'both');
    const balance = await this.tracing.balance(code);
    const name = trace.lots.find((lot) => lot.code === code)?.itemName ?? '';
    const subject = { words: `${code} ${name}`, code };
    return this.print(traceReportView(trace, subject, balance), query);
  }

  async ofMould(tag: string, query: TracePaperQuery): Promise<Buffer> {
    const trace = await this.tracing.traceMould(tag, undefined, query.direction ?? 'both');
    const subject = { words: trace.because ?? tag, code: tag };
    return this.print(traceReportView(trace, subject, null), query);
  }

  /** Of a supplier, a tank and time, a warm fridge: several lots have no one balance. */
  async from(query: TraceStartPaperQuery): Promise<Buffer> {
    const trace = await this.tracing.traceFrom(query);
    const subject = { words: trace.because ?? '', code: null };
    return this.print(traceReportView(trace, subject, null), query);
  }

  private async print(view: TraceReportView, query: PaperQuery): Promise<Buffer> {
    const context = await this.transactions.read((tx) => this.contexts.of(tx, query));
    return traceReport(view, context);
  }
}
