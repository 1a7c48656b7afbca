import type { LabelContent, TextBlock } from '../../domain/label/content';
import { HAIRLINE, type Drawing } from '../kit/drawing';
import type { Run } from '../kit/words';
import { labelType, type LabelType } from './label-type';
import type { LabelSymbol } from './label-view';
import { marksBand } from './marks-band';
import { nutritionPanel } from './nutrition-panel';
import { Stack, type Part, type TooWide } from '../kit/stack';

export interface LabelSize {
  readonly widthMm: number;
  /** Undefined on a continuous roll: as high as the content. */
  readonly heightMm: number | undefined;
  readonly marginMm: number;
}

export interface LaidLabel {
  readonly drawing: Drawing;
  readonly parts: readonly Part[];
  readonly tooWide: TooWide | undefined;
  readonly xHeightMm: number;
}

const GAP_MM = 0.8;

/** Allergens stand out by bold type; nothing else inside a list is bold. */
const blockRuns = ({ kind, runs }: TextBlock): Run[] =>
  runs.map(({ text, emphasis }) => ({ text, strong: kind === 'name' || emphasis !== 'none' }));

const blocks = (content: LabelContent, type: LabelType, stack: Stack): void => {
  let language: TextBlock['language'] | undefined;
  for (const block of content.blocks) {
    const isNewLanguage =
      language !== undefined && block.language !== null && block.language !== language;
    if (isNewLanguage) {
      stack.space(GAP_MM);
      stack.rule(HAIRLINE, 0.15);
      stack.space(GAP_MM);
    }
    language = block.language ?? language;
    const sizePt = block.kind === 'name' ? type.namePt : type.bodyPt;
    stack.part(block.kind, () => {
      stack.text(blockRuns(block), { sizePt });
      stack.space(GAP_MM);
    });
  }
};

/** Between the words and a nutrition panel beside them. */
const GUTTER_MM = 3;
const LEAST_COLUMN_MM = 40;
const WIDEST_PANEL_MM = 60;

const panels = (content: LabelContent, type: LabelType, stack: Stack): void => {
  for (const panel of content.nutrition) {
    stack.part('nutrition', () => {
      nutritionPanel(panel, stack, type.bodyPt);
      stack.space(GAP_MM);
    });
  }
};

interface Label {
  readonly content: LabelContent;
  readonly symbols: readonly LabelSymbol[];
  readonly type: LabelType;
  readonly widthMm: number;
  readonly marginMm: number;
}

interface Column {
  readonly stack: Stack;
  readonly endMm: number;
}

/** Everything in one column, or the nutrition panels in a second one at the right. */
const arrange = ({ content, symbols, type, widthMm, marginMm }: Label, panelMm: number): Column => {
  const innerMm = widthMm - 2 * marginMm;
  const textMm = panelMm === 0 ? innerMm : innerMm - panelMm - GUTTER_MM;
  const stack = new Stack(marginMm, textMm, marginMm);
  blocks(content, type, stack);
  if (panelMm === 0) panels(content, type, stack);
  stack.space(GAP_MM);
  stack.part('marks', () => {
    marksBand(content, symbols, type, stack);
  });
  if (panelMm === 0) return { stack, endMm: stack.endMm };
  const side = new Stack(marginMm + textMm + GUTTER_MM, panelMm, marginMm);
  panels(content, type, side);
  stack.marks.push(...side.marks);
  stack.tooWide ??= side.tooWide;
  return { stack, endMm: Math.max(stack.endMm, side.endMm) };
};

/** Lays the content out at a height of x, in the arrangement that needs less height. */
export const layLabel = (
  content: LabelContent,
  symbols: readonly LabelSymbol[],
  size: LabelSize,
  xHeightMm: number,
): LaidLabel => {
  const { widthMm, marginMm } = size;
  const label = { content, symbols, type: labelType(content, xHeightMm), widthMm, marginMm };
  const innerMm = widthMm - 2 * marginMm;
  const panelMm = Math.min(WIDEST_PANEL_MM, Math.max(LEAST_COLUMN_MM, innerMm * 0.4));
  const hasRoom = content.nutrition.length > 0 && innerMm - panelMm - GUTTER_MM >= LEAST_COLUMN_MM;
  const arranged = [0, ...(hasRoom ? [panelMm] : [])].map((side) => arrange(label, side));
  const best = arranged.reduce((a, b) =>
    b.stack.tooWide === undefined && (a.stack.tooWide !== undefined || b.endMm < a.endMm) ? b : a,
  );
  const wholeMm = best.endMm + marginMm;
  return {
    drawing: { widthMm, heightMm: size.heightMm ?? wholeMm, marks: best.stack.marks },
    parts: [...best.stack.parts, { name: 'whole', heightMm: wholeMm }],
    tooWide: best.stack.tooWide,
    xHeightMm,
  };
};
