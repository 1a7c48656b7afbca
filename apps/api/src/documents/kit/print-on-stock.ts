import { PAGE_SIZES_MM, placeOf, type LabelStock } from '../../domain/printing';
import type { Drawing } from './drawing';
import type { Step } from '../../domain/steps';
import { Pdf, type PdfHead } from './pdf';

/** A face and how often it is printed. */
export interface Prints {
  readonly drawing: Drawing;
  readonly copies: number;
}

/** What is done between two faces of a long run: to say how far it is, to rest, or to stop it. */
export type Between = (step: Step) => Promise<void>;

/** Faces that are drawn in one go. */
const BREATH = 10;

/** Prints faces one after the other on the stock: a page each on rolls, place by place on sheets. */
export const printOnStock = async (
  prints: readonly Prints[],
  stock: LabelStock,
  head: PdfHead,
  between: Between = () => Promise.resolve(),
): Promise<Buffer> => {
  const pdf = new Pdf(head);
  const total = prints.reduce((sum, { copies }) => sum + copies, 0);
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
      if (number % BREATH === 0) await between({ done: number, total });
    }
  }
  return pdf.finish();
};
