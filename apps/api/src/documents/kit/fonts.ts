// The tests' own compilation, too, must find the types of a package that ships none.
// eslint-disable-next-line @typescript-eslint/triple-slash-reference -- it is ambient
/// <reference path="./fontkit.d.ts" />
import { readFileSync } from 'node:fs';
import { create, type Font } from 'fontkit';
import { memo } from './memo';

/**
 * The faces of every paper. Text is Noto Sans; DejaVu lends the few signs that Noto lacks (≥, ≤, →,
 * boxes to tick).
 */
export type Face = 'regular' | 'bold' | 'signs' | 'signsBold';

const FILES: Readonly<Record<Face, string>> = {
  regular: '@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf',
  bold: '@expo-google-fonts/noto-sans/700Bold/NotoSans_700Bold.ttf',
  signs: 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf',
  signsBold: 'dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf',
};

export const FACES = Object.keys(FILES) as readonly Face[];

const files = memo<Buffer>(FACES.length);
const fonts = memo<Font>(FACES.length);

export const fontFile = (face: Face): Buffer =>
  files(face, () => readFileSync(require.resolve(FILES[face])));

const font = (face: Face): Font => fonts(face, () => create(fontFile(face)));

export const hasGlyph = (face: Face, codePoint: number): boolean =>
  font(face).hasGlyphForCodePoint(codePoint);

/** Top of a glyph over the baseline, in parts of the type size. */
const topRatio = (face: Face, sign: string): number => {
  const codePoint = sign.codePointAt(0) ?? 0;
  // A missing glyph would be measured as the empty box that stands for it.
  if (!hasGlyph(face, codePoint)) throw new Error(`The font ${face} has no ${sign}.`);
  return font(face).glyphForCodePoint(codePoint).bbox.maxY / font(face).unitsPerEm;
};

/**
 * Height of a lower-case x in parts of the type size: measured on the glyph, because the tables of
 * some fonts leave it out, and the smaller of regular and bold, because both stand in one list.
 */
export const xHeightRatio = (): number => Math.min(topRatio('regular', 'x'), topRatio('bold', 'x'));

/** Height of the figures, taken on the flat-topped 1. */
export const digitHeightRatio = (face: Face): number => topRatio(face, '1');

const E_MARK = 0x212e;

/** Whole height of the sign ℮, in parts of the type size. */
export const eMarkHeightRatio = (face: Face): number => {
  const { minY, maxY } = font(face).glyphForCodePoint(E_MARK).bbox;
  return (maxY - minY) / font(face).unitsPerEm;
};

/** From the baseline up to where a line of this face begins, in parts of the type size. */
export const ascentRatio = (face: Face): number => font(face).ascent / font(face).unitsPerEm;
export const descentRatio = (face: Face): number => -font(face).descent / font(face).unitsPerEm;

const POINTS_PER_MM = 72 / 25.4;

export const mmToPt = (mm: number): number => mm * POINTS_PER_MM;
export const ptToMm = (pt: number): number => pt / POINTS_PER_MM;

/** Type size, in points, at which the x is that high; rounded up to a hundredth. */
export const sizeForXHeight = (xHeightMm: number): number =>
  Math.ceil((mmToPt(xHeightMm) / xHeightRatio()) * 100) / 100;

/** Height of the x, in mm, as it is printed at a type size. */
export const xHeightMm = (sizePt: number): number => ptToMm(sizePt * xHeightRatio());

/** Type size at which the figures of a face are that high. */
export const sizeForDigitHeight = (face: Face, heightMm: number): number =>
  Math.ceil((mmToPt(heightMm) / digitHeightRatio(face)) * 100) / 100;

const widths = memo<number>(20_000);

/** Width of a text in parts of the type size. Words come again and again, so widths are kept. */
export const widthRatio = (face: Face, text: string): number =>
  widths(face + text, () => font(face).layout(text).advanceWidth / font(face).unitsPerEm);
