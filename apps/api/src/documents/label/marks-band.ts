import type { LabelContent } from '../../domain/label/content';
import { baselineMm, placeLines, type Mark } from '../kit/drawing';
import { lineHeightMm, setText } from '../kit/set-text';
import { FINE_MODULE_MM, barSymbol, symbolSize } from '../kit/symbols';
import type { Run } from '../kit/words';
import type { LabelType } from './label-type';
import type { LabelSymbol } from './label-view';
import { Stack } from '../kit/stack';
import { say } from '../../domain/words/say';

/** Words beside a symbol need at least this. */
const LEAST_TEXT_MM = 24;
const GAP_MM = 1.5;

const E_MARK = '\u212E';

/** Net quantity with the sign ℮ on the same line, each in its own size. */
const quantityLine = ({ quantity }: LabelContent, type: LabelType, stack: Stack): void => {
  if (quantity === null) return;
  const yMm = stack.endMm;
  stack.text([{ text: quantity.text, strong: true }], { sizePt: type.quantityPt });
  if (!quantity.eMark) return;
  const used = setText([{ text: quantity.text, strong: true }], stack.widthMm, type.quantityPt);
  const last = used[used.length - 1];
  const sign = setText(E_MARK, 100, type.eMarkPt);
  const besideMm = (last?.widthMm ?? 0) + GAP_MM;
  const fitsBeside = besideMm + (sign[0]?.widthMm ?? 0) <= stack.widthMm;
  const [first, second] = [type.quantityPt, type.eMarkPt].map(lineHeightMm) as [number, number];
  const lineTop = yMm + (used.length - 1) * first;
  const at = fitsBeside
    ? {
        xMm: stack.xMm + besideMm,
        yMm: lineTop + baselineMm(type.quantityPt) - baselineMm(type.eMarkPt),
      }
    : { xMm: stack.xMm, yMm: stack.endMm };
  stack.marks.push(...placeLines(sign, { ...at, widthMm: 100 }, { sizePt: type.eMarkPt }));
  if (fitsBeside) stack.space(Math.max(0, second - first));
  else stack.space(second);
};

const words = (content: LabelContent, type: LabelType, stack: Stack): void => {
  quantityLine(content, type, stack);
  const style = { sizePt: type.bodyPt };
  const lead = content.date.words.map(({ text }) => text).join(' / ');
  const date: Run[] = [{ text: `${lead} ` }, { text: content.date.date, strong: true }];
  stack.text(date, style);
  stack.text([{ text: content.lotMark, strong: true }], style);
  if (content.price !== null) {
    const { price, unitPrice } = content.price;
    stack.text(
      [{ text: price, strong: true }, { text: unitPrice === null ? '' : `  ${unitPrice}` }],
      style,
    );
  }
};

/** No line of a caption is ever set this wide. */
const UNBROKEN_MM = 1000;

const widthOf = (line: string, sizePt: number): number =>
  Math.max(0, ...setText(line, UNBROKEN_MM, sizePt).map(({ widthMm }) => widthMm));

/** What people read under a code repeats what stands elsewhere, so it may be a little smaller. */
const CAPTION_RATIO = 0.85;

const symbolMarks = (
  symbol: LabelSymbol,
  xMm: number,
  yMm: number,
  captionPt: number,
  mostMm: number,
): { marks: Mark[]; widthMm: number; heightMm: number } => {
  const bars = barSymbol(symbol.kind, symbol.text);
  const { widthMm: barsMm, heightMm } = symbolSize(bars, FINE_MODULE_MM);
  const lines = symbol.caption?.split('\n') ?? [];
  const widestMm = Math.max(0, ...lines.map((line) => widthOf(line, captionPt)));
  const widthMm = Math.max(barsMm, Math.min(widestMm + 0.1, mostMm));
  const caption = lines.flatMap((line) => setText(line, widthMm, captionPt));
  const left = xMm + (widthMm - barsMm) / 2;
  return {
    marks: [
      { kind: 'symbol', symbol: bars, xMm: left, yMm, moduleMm: FINE_MODULE_MM },
      ...placeLines(
        caption,
        { xMm, yMm: yMm + heightMm, widthMm },
        { sizePt: captionPt, align: 'centre' },
      ),
    ],
    widthMm,
    heightMm: heightMm + caption.length * lineHeightMm(captionPt),
  };
};

/** The figures of a label – quantity, date, lot, price – with its bar codes at their right or below. */
export const marksBand = (
  content: LabelContent,
  symbols: readonly LabelSymbol[],
  type: LabelType,
  stack: Stack,
): void => {
  const top = stack.endMm;
  const captionPt = type.bodyPt * CAPTION_RATIO;
  const at = (symbol: LabelSymbol, xMm: number, yMm: number) =>
    symbolMarks(symbol, xMm, yMm, captionPt, stack.widthMm);
  const [first, ...others] = symbols;
  const firstSize = first === undefined ? undefined : at(first, 0, 0);
  const fitsBeside =
    firstSize !== undefined && stack.widthMm - firstSize.widthMm - GAP_MM >= LEAST_TEXT_MM;
  const textMm = fitsBeside ? stack.widthMm - firstSize.widthMm - GAP_MM : stack.widthMm;
  const text = new Stack(stack.xMm, textMm, top);
  words(content, type, text);
  stack.marks.push(...text.marks);
  if (text.tooWide !== undefined) {
    stack.noteTooWide(text.tooWide.what, text.tooWide.neededMm + stack.widthMm - textMm);
  }
  let endMm = text.endMm;
  if (first !== undefined && fitsBeside) {
    const placed = at(first, stack.xMm + textMm + GAP_MM, top);
    stack.marks.push(...placed.marks);
    endMm = Math.max(endMm, top + placed.heightMm);
  }
  for (const symbol of first !== undefined && !fitsBeside ? symbols : others) {
    const placed = at(symbol, stack.xMm, endMm + GAP_MM);
    stack.noteTooWide(say`the bar code (${symbol.kind})`, placed.widthMm);
    stack.marks.push(...placed.marks);
    endMm += placed.heightMm + GAP_MM;
  }
  stack.space(endMm - top);
};
