import { PAGE_SIZES_MM, placeOf, type LabelStock } from '../../domain/printing';
import type { Drawing } from './drawing';
import { Pdf, type PdfHead } from './pdf';

/** A face and how often it is printed. */
export interface Prints {
  readonly drawing: Drawing;
  readonly copies: number;
}

/** Prints faces one after the other on the stock: a page each on rolls, place by place on sheets. */
export const printOnStock = (
  prints: readonly Prints[],
  stock: LabelStock,
  head: PdfHead,
): Promise<Buffer> => {
  const pdf = new Pdf(head);
  let number = 0;
  let page = -1;
  for (const { drawing, copies } of prints) {
    for (let copy = 0; copy < copies; copy += 1) {
      const place = placeOf(stock, number);
      if (place.page !== page) {
        if (stock.kind === 'sheet') pdf.addPage(...PAGE_SIZES_MM[stock.page]);
        else pdf.addPage(drawing.widthMm, drawing.heightMm);
        page = place.page;
      }
      pdf.draw(drawing, place.xMm, place.yMm);
      number += 1;
    }
  }
  return pdf.finish();
};
