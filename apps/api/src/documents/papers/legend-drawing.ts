import { INK, placeText, SOFT, type Drawing, type Mark } from '../kit/drawing';
import type { PaperLanguage, Translated } from '../kit/language';
import { Stack } from '../kit/stack';
import type { CardSize, LegendCardView, LegendPiece } from './legend-view';

interface LegendWords {
  readonly contains: string;
  readonly mayContain: string;
  readonly unknown: string;
  readonly caution: string;
}

const WORDS: Translated<LegendWords> = {
  en: {
    contains: 'contains',
    mayContain: 'may contain',
    unknown: 'allergens unknown',
    caution: 'The list of ingredients on the box is what counts. Allergies: ask us before you eat.',
  },
  fr: {
    contains: 'contient',
    mayContain: 'peut contenir',
    unknown: 'allergènes inconnus',
    caution:
      'La liste des ingrédients sur la boîte fait foi. Allergie : demandez-nous avant de goûter.',
  },
};

const MARGIN_MM = 7;
const BODY_PT = 8;
const NAME_PT = 9;

const picture = (
  view: LegendCardView,
  xMm: number,
  yMm: number,
  widthMm: number,
): { marks: Mark[]; heightMm: number } => {
  const slotMm = Math.min(widthMm / view.columns, 14);
  const marks = view.slots.flatMap((number, index): Mark[] => {
    const left = xMm + (index % view.columns) * slotMm;
    const top = yMm + Math.floor(index / view.columns) * slotMm;
    const box: Mark = {
      kind: 'box',
      xMm: left + 0.4,
      yMm: top + 0.4,
      widthMm: slotMm - 0.8,
      heightMm: slotMm - 0.8,
      lineMm: 0.2,
    };
    if (number === 0) return [box];
    const sizePt = Math.min(13, slotMm * 1.4);
    const figure = placeText(
      [{ text: String(number), strong: true }],
      { xMm: left, yMm: top + slotMm / 2 - sizePt * 0.225, widthMm: slotMm },
      { sizePt, align: 'centre' },
    );
    return [box, ...figure.marks];
  });
  return { marks, heightMm: Math.ceil(view.slots.length / view.columns) * slotMm };
};

const pieceText = (piece: LegendPiece, language: PaperLanguage, stack: Stack): void => {
  const words = WORDS[language];
  stack.text([{ text: `${piece.number}  ${piece.name}`, strong: true }], { sizePt: NAME_PT });
  if (piece.description !== null) stack.text(piece.description, { sizePt: BODY_PT });
  const allergens = [
    ...(piece.contains.length === 0
      ? []
      : [{ text: `${words.contains} ` }, { text: piece.contains.join(', '), strong: true }]),
    ...(piece.mayContain.length === 0
      ? []
      : [
          { text: `${piece.contains.length === 0 ? '' : '; '}${words.mayContain} ` },
          { text: piece.mayContain.join(', '), strong: true },
        ]),
    ...(piece.allergensUnknown ? [{ text: ` ${words.unknown}`, strong: true }] : []),
  ];
  if (allergens.length > 0) stack.text(allergens, { sizePt: BODY_PT, colour: INK });
  stack.space(1.4);
};

/** Pieces in as many columns of equal width as the picture leaves room for. */
export const legendDrawing = (
  view: LegendCardView,
  size: CardSize,
  language: PaperLanguage,
): { drawing: Drawing; endMm: number } => {
  const innerMm = size.widthMm - 2 * MARGIN_MM;
  const head = new Stack(MARGIN_MM, innerMm, MARGIN_MM);
  head.text(view.workshopName, { sizePt: 7.5, colour: SOFT });
  head.text([{ text: view.boxName, strong: true }], { sizePt: 14 });
  head.space(2);
  const pictureMm = Math.min(innerMm * 0.4, view.columns * 14);
  const drawn = picture(view, MARGIN_MM, head.endMm, pictureMm);
  const listX = MARGIN_MM + pictureMm + 5;
  const listMm = innerMm - pictureMm - 5;
  const columns = listMm >= 110 ? 2 : 1;
  const perColumn = Math.ceil(view.pieces.length / columns);
  const stacks = Array.from({ length: columns }, (_, index) => {
    const widthMm = (listMm - (columns - 1) * 4) / columns;
    const stack = new Stack(listX + index * (widthMm + 4), widthMm, head.endMm);
    for (const piece of view.pieces.slice(index * perColumn, (index + 1) * perColumn)) {
      pieceText(piece, language, stack);
    }
    return stack;
  });
  const bodyMm = Math.max(head.endMm + drawn.heightMm, ...stacks.map(({ endMm }) => endMm)) + 1;
  const foot = new Stack(MARGIN_MM, innerMm, bodyMm);
  const lot = view.lotMark === null ? '' : `${view.lotMark} · `;
  foot.text(`${lot}${WORDS[language].caution}`, { sizePt: 7, colour: SOFT });
  const marks = [
    ...head.marks,
    ...drawn.marks,
    ...stacks.flatMap((stack) => stack.marks),
    ...foot.marks,
  ];
  return { drawing: { ...size, marks }, endMm: foot.endMm + MARGIN_MM };
};
