import type { LabelStock } from '../../domain/printing';
import type { TagQuery } from './papers.dto';

const mm = (text: string | undefined, otherwise: number): number =>
  text === undefined ? otherwise : Number(text);

/** The stock that a request names; a die-cut label of 70 × 45 mm when it names none. */
export const tagStock = (query: TagQuery): LabelStock => {
  const widthMm = mm(query.widthMm, 70);
  const heightMm = mm(query.heightMm, 45);
  const marginMm = mm(query.marginMm, 2);
  switch (query.stock ?? 'die_cut') {
    case 'die_cut':
      return { kind: 'die_cut', widthMm, heightMm, marginMm };
    case 'roll':
      return { kind: 'roll', widthMm, marginMm };
    case 'sheet':
      return {
        kind: 'sheet',
        page: query.page ?? 'A4',
        columns: query.columns ?? 2,
        rows: query.rows ?? 6,
        labelWidthMm: widthMm,
        labelHeightMm: heightMm,
        leftMm: mm(query.leftMm, 0),
        topMm: mm(query.topMm, 0),
        pitchXMm: mm(query.pitchXMm, widthMm),
        pitchYMm: mm(query.pitchYMm, heightMm),
        marginMm,
        startAt: query.startAt ?? 1,
      };
  }
};
