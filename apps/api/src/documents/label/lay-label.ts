import type { LabelContent, TextBlock } from '../../domain/label/content';
import { HAIRLINE, type Drawing } from '../kit/drawing';
import type { Run } from '../kit/words';
import { labelType, type LabelType } from './label-type';
import type { LabelSymbol } from './label-view';
import { marksBand } from './marks-band';
import { nutritionPanel } from './nutrition-panel';
import { Stack, type Part, type TooWide } from './stack';

export interface LaidLabel {
  readonly drawing: Drawing;
  readonly parts: readonly Part[];
  readonly tooWide: TooWide | undefined;
  readonly xHeightMm: number;
}

const GAP_MM = 0.8;

/** Allergens stand out by bold type; nothing else inside a list is bold. */
const blockRuns = ({ kind, runs }: TextBlock): Run[] =>
  runs.map(({ text, emphasis }) => ({ text, bold: kind === 'name' || emphasis !== 'none' }));

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

/** Lays the content out in a column, at a height of x, and says how high it came out. */
export const layLabel = (
  content: LabelContent,
  symbols: readonly LabelSymbol[],
  size: {
    readonly widthMm: number;
    readonly heightMm: number | undefined;
    readonly marginMm: number;
  },
  xHeightMm: number,
): LaidLabel => {
  const type = labelType(content, xHeightMm);
  const { widthMm, marginMm } = size;
  const stack = new Stack(marginMm, widthMm - 2 * marginMm, marginMm);
  blocks(content, type, stack);
  for (const panel of content.nutrition) {
    stack.part('nutrition', () => {
      nutritionPanel(panel, stack, type.bodyPt);
      stack.space(GAP_MM);
    });
  }
  stack.space(GAP_MM);
  stack.part('marks', () => {
    marksBand(content, symbols, type, stack);
  });
  return {
    drawing: {
      widthMm,
      heightMm: size.heightMm ?? stack.endMm + marginMm,
      marks: stack.marks,
    },
    parts: [...stack.parts, { name: 'whole', heightMm: stack.endMm + marginMm }],
    tooWide: stack.tooWide,
    xHeightMm,
  };
};
