import { INK, SOFT, type TextStyle } from './drawing';

/** Of all four sides of a page; the foot line stands in the lower one. */
export const MARGIN_MM = 18;

export const BODY: TextStyle = { sizePt: 9 };
export const SMALL: TextStyle = { sizePt: 7.5, colour: SOFT };
export const HEADING: TextStyle = { sizePt: 11, colour: INK };
