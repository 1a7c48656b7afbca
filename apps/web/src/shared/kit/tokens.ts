/**
 * Every colour, size and typeface of the app. Contrast on `paper` and `sheet`, computed with the
 * formula of WCAG 2.2 (relative luminance): ink 15, muted 5.9, accent 7.2, warn 6.6, caution 6.6.
 */
export const tokens = {
  paper: '#f7f2e8',
  sheet: '#fffdf8',
  shade: '#efe7d8',
  line: '#d8ccb8',
  /** Lines of fields and other things that have to be found: 3:1 on paper at least. */
  edge: '#8b7c68',
  ink: '#221b16',
  muted: '#645749',
  accent: '#1d5b4f',
  accentSoft: '#dfe9e3',
  onAccent: '#ffffff',
  warn: '#96300f',
  warnSoft: '#f8e3da',
  caution: '#704600',
  cautionSoft: '#f6e8c8',
  fontText:
    'ui-sans-serif, "Segoe UI", "Noto Sans", "Helvetica Neue", "Liberation Sans", Arial, sans-serif',
  fontTitle:
    '"Iowan Old Style", "Palatino Linotype", Palatino, "Noto Serif", "Liberation Serif", Georgia, serif',
  /** The least height and width of anything that is tapped. */
  target: '44px',
  radius: '3px',
} as const;

/** Hues of parts in pictures; each part also carries its name and, side by side, a pattern of gaps. */
export const pictureHues = [
  '#1d5b4f',
  '#b3702a',
  '#6b4a7d',
  '#8a2f3c',
  '#3f6c94',
  '#7d7a2c',
  '#5a4a3c',
  '#a0527a',
  '#4f8a6b',
  '#c28f2c',
  '#2b3a67',
  '#c0563f',
  '#6f8f2f',
  '#7f6fb0',
  '#2a8494',
  '#7b1e5a',
] as const;

export const pictureHue = (position: number): string =>
  pictureHues[position % pictureHues.length] ?? tokens.accent;
