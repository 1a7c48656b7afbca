import { setText, type Line } from '../kit/set-text';

/** Cuts to a number of lines and says so with an ellipsis. */
export const cutLines = (
  text: string,
  widthMm: number,
  sizePt: number,
  most: number,
  strong: boolean,
): readonly Line[] => {
  const lines = setText([{ text, strong }], widthMm, sizePt);
  if (lines.length <= most) return lines;
  let kept = text;
  while (kept !== '') {
    kept = [...kept].slice(0, -1).join('');
    const cut = setText([{ text: `${kept.trimEnd()}…`, strong }], widthMm, sizePt);
    if (cut.length <= most) return cut;
  }
  return [];
};
