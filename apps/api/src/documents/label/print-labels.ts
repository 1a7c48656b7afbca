import type { PrintingRefusal } from '../../domain/printing';
import { ok, type Result } from '../../domain/refusals';
import type { PdfHead } from '../kit/pdf';
import { type Between, printOnStock, type Prints } from '../kit/print-on-stock';
import { fitLabel } from './fit-label';
import type { LabelRequest } from './label-view';

export interface PrintedLabels {
  readonly pdf: Buffer;
  /** Height of x, in mm, of each label that was printed. */
  readonly xHeightsMm: readonly number[];
}

/** Labels on one stock, each as often as wanted. The same requests and head give the same bytes. */
export const printLabels = async (
  labels: readonly (Omit<LabelRequest, 'stock'> & { readonly copies: number })[],
  stock: LabelRequest['stock'],
  head: PdfHead,
  between?: Between,
): Promise<Result<PrintedLabels, PrintingRefusal>> => {
  const prints: Prints[] = [];
  const xHeightsMm: number[] = [];
  for (const { copies, ...label } of labels) {
    const fitted = fitLabel({ ...label, stock });
    if (!fitted.ok) return fitted;
    prints.push({ drawing: fitted.value.drawing, copies });
    xHeightsMm.push(fitted.value.xHeightMm);
  }
  return ok({ pdf: await printOnStock(prints, stock, head, between), xHeightsMm });
};
