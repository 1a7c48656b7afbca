import type { PrintingRefusal } from '../../domain/printing';
import { ok, refuse, type Result } from '../../domain/refusals';
import type { PaperLanguage } from '../kit/language';
import { Pdf, type PdfHead } from '../kit/pdf';
import { checkPrintable } from '../kit/printable';
import { legendDrawing } from './legend-drawing';
import type { CardSize, LegendCardView } from './legend-view';
import { say } from '../../domain/words/say';

export const legendCard = async (
  view: LegendCardView,
  size: CardSize,
  head: PdfHead & { readonly language: PaperLanguage },
): Promise<Result<Buffer, PrintingRefusal>> => {
  const texts = [
    view.boxName,
    view.workshopName,
    ...view.pieces.flatMap((p) => [p.name, p.description ?? '', ...p.contains, ...p.mayContain]),
  ];
  const printable = checkPrintable(texts);
  if (!printable.ok) return printable;
  const { drawing, endMm } = legendDrawing(view, size, head.language);
  if (endMm > size.heightMm + 0.01) {
    return refuse({
      code: 'label-does-not-fit',
      detail: say`This card needs ${Math.ceil(endMm)} mm of height at ${size.widthMm} mm of width; it has ${size.heightMm}.`,
      facts: { neededHeightMm: Math.ceil(endMm) },
    });
  }
  const pdf = new Pdf(head);
  pdf.addPage(size.widthMm, size.heightMm);
  pdf.draw(drawing);
  return ok(await pdf.finish());
};
