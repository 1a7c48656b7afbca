import type { NutritionPanel, NutritionRow } from '../../domain/label/content';
import { HAIRLINE, INK, placeText } from '../kit/drawing';
import { lineHeightMm, setText } from '../kit/set-text';
import type { Words } from '../kit/words';
import type { Stack } from '../kit/stack';

interface Column {
  readonly heading: string;
  readonly read: (row: NutritionRow) => string;
}

/** Amount, portion and per cent; of two pairs, each per cent stands beside its own amount. */
const columnsOf = (panel: NutritionPanel): readonly Column[] => {
  const amount = { heading: panel.amountHeading, read: (row: NutritionRow) => row.amount };
  const portion = column(panel.portionHeading, (row) => row.portion ?? '');
  const percent = column(panel.percentHeading, (row) => row.percent ?? '');
  const ofPortion = column(panel.portionPercentHeading ?? null, (row) => row.portionPercent ?? '');
  return ofPortion.length === 0
    ? [amount, ...portion, ...percent]
    : [amount, ...percent, ...portion, ...ofPortion];
};

const column = (heading: string | null, read: Column['read']): Column[] =>
  heading === null ? [] : [{ heading, read }];

const INDENT_MM = 1.6;

const widthOf = (words: Words, sizePt: number): number =>
  Math.max(0, ...setText(words, 1000, sizePt).map(({ widthMm }) => widthMm));

/** Width that each figure column needs: its widest figure, or the widest word of its heading. */
const figureWidths = (panel: NutritionPanel, sizePt: number): number[] => {
  return columnsOf(panel).map(({ heading, read }) => {
    const words = heading.split(' ').map((text) => widthOf([{ text, strong: true }], sizePt));
    return Math.max(...panel.rows.map((row) => widthOf(read(row), sizePt)), ...words) + 1.5;
  });
};

/** One after the other, as Article 34(2) of Regulation (EU) No 1169/2011 allows for want of room. */
const linear = (panel: NutritionPanel, stack: Stack, sizePt: number): void => {
  const rows = panel.rows.map((row) => {
    const [amount, ...others] = columnsOf(panel).map(({ read }) => read(row));
    const figures = others.filter((text) => text !== '');
    return `${row.label} ${amount ?? ''}${figures.length === 0 ? '' : ` (${figures.join(', ')})`}`;
  });
  const headings = columnsOf(panel)
    .map(({ heading }) => heading)
    .join(', ');
  stack.text(
    [
      { text: `${panel.title} `, strong: true },
      {
        text: `${[...panel.lead, headings].filter((text) => text !== '').join('; ')}: ${rows.join(', ')}.`,
      },
      { text: panel.notes.length === 0 ? '' : ` ${panel.notes.join(' ')}` },
    ],
    { sizePt },
  );
};

const tableRow = (
  stack: Stack,
  label: Words,
  figures: readonly Words[],
  widths: readonly number[],
  sizePt: number,
  indentMm: number,
): void => {
  const figuresMm = widths.reduce((total, width) => total + width, 0);
  const labelMm = stack.widthMm - figuresMm - indentMm;
  const yMm = stack.endMm;
  const placed = placeText(label, { xMm: stack.xMm + indentMm, yMm, widthMm: labelMm }, { sizePt });
  let heightMm = Math.max(placed.heightMm, lineHeightMm(sizePt));
  let xMm = stack.xMm + stack.widthMm - figuresMm;
  stack.marks.push(...placed.marks);
  for (const [index, widthMm] of widths.entries()) {
    const figure = placeText(
      figures[index] ?? '',
      { xMm: xMm + 1.5, yMm, widthMm: widthMm - 1.5 },
      { sizePt, align: 'right' },
    );
    stack.marks.push(...figure.marks);
    heightMm = Math.max(heightMm, figure.heightMm);
    xMm += widthMm;
  }
  stack.space(heightMm);
};

/**
 * A table when the label is wide enough for its figures and half as much again, else run on. Says
 * whether it is a table: the law wants one wherever there is room.
 */
export const nutritionPanel = (panel: NutritionPanel, stack: Stack, sizePt: number): boolean => {
  const widths = figureWidths(panel, sizePt);
  const figuresMm = widths.reduce((total, width) => total + width, 0);
  const widestLabel = Math.max(
    ...panel.rows.flatMap(({ label }) => label.split(' ').map((word) => widthOf(word, sizePt))),
  );
  if (stack.widthMm - figuresMm - INDENT_MM < Math.max(widestLabel, stack.widthMm * 0.35)) {
    linear(panel, stack, sizePt);
    return false;
  }
  stack.text([{ text: panel.title, strong: true }], { sizePt });
  for (const line of panel.lead) stack.text(line, { sizePt });
  stack.rule(INK, 0.25);
  const headings = columnsOf(panel).map(({ heading }) => [{ text: heading, strong: true }]);
  tableRow(stack, '', headings, widths, sizePt, 0);
  for (const row of panel.rows) {
    stack.rule(HAIRLINE, 0.1);
    const figures = columnsOf(panel).map(({ read }) => read(row));
    tableRow(stack, row.label, figures, widths, sizePt, row.indented ? INDENT_MM : 0);
  }
  stack.rule(INK, 0.25);
  for (const note of panel.notes) stack.text(note, { sizePt });
  return true;
};
