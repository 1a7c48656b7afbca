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
  /** Every nutrition declaration is a table (Article 34(2)), none run on. */
  readonly tabular: boolean;
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
const WIDEST_PANEL_MM = 82;

const panels = (content: LabelContent, type: LabelType, stack: Stack): boolean => {
  let tabular = true;
  for (const panel of content.nutrition) {
    stack.part('nutrition', () => {
      tabular = nutritionPanel(panel, stack, type.bodyPt) && tabular;
      stack.space(GAP_MM);
    });
  }
  return tabular;
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
  readonly tabular: boolean;
}

/** Everything in one column, or the nutrition panels in a second one at the right. */
const arrange = ({ content, symbols, type, widthMm, marginMm }: Label, panelMm: number): Column => {
  const innerMm = widthMm - 2 * marginMm;
  const textMm = panelMm === 0 ? innerMm : innerMm - panelMm - GUTTER_MM;
  const stack = new Stack(marginMm, textMm, marginMm);
  blocks(content, type, stack);
  const below = panelMm === 0 ? panels(content, type, stack) : true;
  stack.space(GAP_MM);
  stack.part('marks', () => {
    marksBand(content, symbols, type, stack);
  });
  if (panelMm === 0) return { stack, endMm: stack.endMm, tabular: below };
  const side = new Stack(marginMm + textMm + GUTTER_MM, panelMm, marginMm);
  const tabular = panels(content, type, side);
  stack.marks.push(...side.marks);
  stack.tooWide ??= side.tooWide;
  return { stack, endMm: Math.max(stack.endMm, side.endMm), tabular };
};

/** Shares of the width that a second column of nutrition may have. */
const PANEL_SHARES = [0.4, 0.55, 0.65] as const;

/** What fits before what doesn't, a table before lines run on, and then what needs less height. */
const better = (a: Column, b: Column, roomMm: number): Column => {
  const rank = ({ stack, endMm, tabular }: Column): number =>
    (stack.tooWide === undefined ? 0 : 4) + (endMm <= roomMm ? 0 : 2) + (tabular ? 0 : 1);
  if (rank(a) !== rank(b)) return rank(b) < rank(a) ? b : a;
  return b.endMm < a.endMm ? b : a;
};

/** Lays the content out at a height of x, in the best of its arrangements. */
export const layLabel = (
  content: LabelContent,
  symbols: readonly LabelSymbol[],
  size: LabelSize,
  xHeightMm: number,
): LaidLabel => {
  const { widthMm, marginMm } = size;
  const label = { content, symbols, type: labelType(content, xHeightMm), widthMm, marginMm };
  const innerMm = widthMm - 2 * marginMm;
  const sides = PANEL_SHARES.map((share) =>
    Math.min(WIDEST_PANEL_MM, Math.max(LEAST_COLUMN_MM, innerMm * share)),
  ).filter((side) => innerMm - side - GUTTER_MM >= LEAST_COLUMN_MM);
  const tried = content.nutrition.length > 0 ? [0, ...new Set(sides)] : [0];
  const roomMm = (size.heightMm ?? Number.POSITIVE_INFINITY) - marginMm + 0.01;
  const best = tried.map((side) => arrange(label, side)).reduce((a, b) => better(a, b, roomMm));
  const wholeMm = best.endMm + marginMm;
  return {
    drawing: { widthMm, heightMm: size.heightMm ?? wholeMm, marks: best.stack.marks },
    parts: [...best.stack.parts, { name: 'whole', heightMm: wholeMm }],
    tooWide: best.stack.tooWide,
    tabular: best.tabular,
    xHeightMm,
  };
};
