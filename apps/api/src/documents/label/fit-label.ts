import { checkStock, labelSize, type PrintingRefusal } from '../../domain/printing';
import { ok, refuse, type Result } from '../../domain/refusals';
import type { LabelContent } from '../../domain/label/content';
import type { Drawing } from '../kit/drawing';
import { checkPrintable } from '../kit/printable';
import { layLabel, type LaidLabel } from './lay-label';
import type { LabelRequest } from './label-view';
import { named, say, sentences } from '../../domain/words/say';

export interface FittedLabel {
  readonly drawing: Drawing;
  /** As printed, for the record of the run. */
  readonly xHeightMm: number;
}

/** A roll is cut where the label ends, but a label longer than this is no label. */
const LONGEST_ROLL_LABEL_MM = 300;
/** Without a wish the type grows into the room there is, in these steps over the least. */
const GROWTH = [1.35, 1.25, 1.15, 1.08, 1] as const;
const WIDEST_TRIED_MM = 220;

const textsOf = (content: LabelContent): string[] => [
  ...content.blocks.map(({ runs }) => runs.map(({ text }) => text).join('')),
  ...content.nutrition.flatMap((panel) => [
    panel.title,
    panel.amountHeading,
    panel.portionHeading ?? '',
    panel.percentHeading ?? '',
    panel.portionPercentHeading ?? '',
    ...panel.lead,
    ...panel.notes,
    ...panel.rows.flatMap((row) => [
      row.label,
      row.amount,
      row.portion ?? '',
      row.percent ?? '',
      row.portionPercent ?? '',
    ]),
  ]),
  content.quantity?.text ?? '',
  ...content.date.words.map(({ text }) => text),
  content.date.date,
  content.lotMark,
  content.price?.price ?? '',
  content.price?.unitPrice ?? '',
];

const wholeMm = ({ parts }: LaidLabel): number => parts[parts.length - 1]?.heightMm ?? 0;

const fits = (laid: LaidLabel, heightMm: number | undefined): boolean =>
  laid.tooWide === undefined && wholeMm(laid) <= (heightMm ?? LONGEST_ROLL_LABEL_MM) + 0.01;

/** The least width at which all of it fits the height; undefined when none that is tried does. */
const widthThatFits = (request: LabelRequest, xHeightMm: number): number | undefined => {
  const size = labelSize(request.stock);
  const { marginMm } = request.stock;
  for (let widthMm = Math.ceil(size.widthMm); widthMm <= WIDEST_TRIED_MM; widthMm += 2) {
    const tried = { widthMm, heightMm: size.heightMm, marginMm };
    if (fits(layLabel(request.content, request.symbols, tried, xHeightMm), size.heightMm))
      return widthMm;
  }
  return undefined;
};

const mm = (value: number): string => `${Math.ceil(value)} mm`;

const doesNotFit = (request: LabelRequest, laid: LaidLabel): Result<never, PrintingRefusal> => {
  const { widthMm, heightMm } = labelSize(request.stock);
  const neededWidthMm = widthThatFits(request, laid.xHeightMm);
  const neededHeightMm = Math.ceil(wholeMm(laid));
  const panelMm = laid.parts
    .filter(({ name }) => name === 'nutrition')
    .reduce((total, part) => total + part.heightMm, 0);
  const least = say`With a lower-case x of ${laid.xHeightMm} mm`;
  const found =
    laid.tooWide === undefined
      ? say`${least} this label needs ${neededHeightMm} mm of height at ${widthMm} mm of width; there are ${heightMm ?? LONGEST_ROLL_LABEL_MM}.`
      : say`${least} ${named(laid.tooWide.what)} is ${mm(laid.tooWide.neededMm)} wide and has no room on a label of ${widthMm} mm.`;
  const ways = [
    ...(laid.tooWide === undefined && heightMm !== undefined
      ? [say`a label of ${widthMm} × ${neededHeightMm} mm`]
      : []),
    ...(neededWidthMm === undefined ? [] : [say`a label ${neededWidthMm} mm wide`]),
    ...(laid.tooWide === undefined &&
    panelMm > 0 &&
    heightMm !== undefined &&
    wholeMm(laid) - panelMm <= heightMm
      ? [say`this label without the nutrition panel, where the law lets it be left off`]
      : []),
    ...(request.content.languages.length > 1 ? [say`one language less`] : []),
  ];
  return refuse({
    code: 'label-does-not-fit',
    detail:
      ways.length === 0
        ? found
        : sentences([found, say`What would fit: ${sentences(ways, '; ')}.`]),
    facts: {
      neededHeightMm,
      neededWidthMm: neededWidthMm ?? null,
      parts: laid.parts.map(({ name, heightMm: part }) => ({ name, heightMm: part.toFixed(1) })),
      ...(laid.tooWide === undefined ? {} : { tooWide: laid.tooWide.what }),
    },
  });
};

/**
 * Lays a label out on its stock. The type is never smaller than the content's least height of x: a
 * label that has no room for that is refused, with what would have.
 */
export const fitLabel = (request: LabelRequest): Result<FittedLabel, PrintingRefusal> => {
  const stock = checkStock(request.stock);
  if (!stock.ok) return stock;
  const printable = checkPrintable(textsOf(request.content));
  if (!printable.ok) return printable;
  const size = { ...labelSize(request.stock), marginMm: request.stock.marginMm };
  const least = Math.max(request.content.minXHeightMm, request.xHeightMm ?? 0);
  const isFixed = request.xHeightMm !== undefined || size.heightMm === undefined;
  let runOn: LaidLabel | undefined;
  for (const growth of isFixed ? [1] : GROWTH) {
    const xHeightMm = Math.round(least * growth * 100) / 100;
    const laid = layLabel(request.content, request.symbols, size, xHeightMm);
    if (!fits(laid, size.heightMm)) continue;
    if (laid.tabular) return ok({ drawing: laid.drawing, xHeightMm });
    // Smaller letters in a table come before larger ones run on.
    runOn ??= laid;
  }
  if (runOn) return ok({ drawing: runOn.drawing, xHeightMm: runOn.xHeightMm });
  return doesNotFit(request, layLabel(request.content, request.symbols, size, least));
};
