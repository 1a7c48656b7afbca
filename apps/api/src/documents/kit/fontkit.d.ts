/** The few members of fontkit that are used here; the package ships no types. */
declare module 'fontkit' {
  export interface Glyph {
    readonly bbox: { readonly minY: number; readonly maxY: number };
    readonly advanceWidth: number;
  }
  export interface Font {
    readonly unitsPerEm: number;
    readonly ascent: number;
    readonly descent: number;
    hasGlyphForCodePoint(codePoint: number): boolean;
    glyphForCodePoint(codePoint: number): Glyph;
    layout(text: string): { readonly advanceWidth: number };
  }
  export function create(buffer: Buffer): Font;
}
