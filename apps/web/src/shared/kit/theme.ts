import { createTheme, type CSSVariablesResolver, type MantineColorsTuple } from '@mantine/core';
import { tokens } from './tokens';

// One accent: the ten steps that the library asks for run from its soft tint to its deepest tone.
const accent: MantineColorsTuple = [
  '#eef4f1',
  tokens.accentSoft,
  '#bcd2c8',
  '#94b7aa',
  '#6c9c8c',
  '#478070',
  tokens.accent,
  '#184d43',
  '#133f37',
  '#0e312b',
];

export const theme = createTheme({
  colors: { accent },
  primaryColor: 'accent',
  primaryShade: 6,
  black: tokens.ink,
  white: tokens.sheet,
  fontFamily: tokens.fontText,
  headings: { fontFamily: tokens.fontTitle, fontWeight: '600' },
  defaultRadius: tokens.radius,
  cursorType: 'pointer',
  respectReducedMotion: true,
  // A button with a long label grows instead of cutting it off.
  components: {
    Button: {
      styles: {
        root: {
          height: 'auto',
          minHeight: 'max(var(--target), var(--button-height))',
          paddingBlock: '0.4rem',
        },
        label: { whiteSpace: 'normal' },
      },
    },
  },
});

/** The app's tokens as CSS variables, and the library's own grey roles mapped onto them. */
export const cssVariables: CSSVariablesResolver = () => ({
  variables: {
    '--paper': tokens.paper,
    '--sheet': tokens.sheet,
    '--shade': tokens.shade,
    '--line': tokens.line,
    '--edge': tokens.edge,
    '--ink': tokens.ink,
    '--muted': tokens.muted,
    '--accent': tokens.accent,
    '--accent-soft': tokens.accentSoft,
    '--on-accent': tokens.onAccent,
    '--warn': tokens.warn,
    '--warn-soft': tokens.warnSoft,
    '--caution': tokens.caution,
    '--caution-soft': tokens.cautionSoft,
    '--font-title': tokens.fontTitle,
    '--font-text': tokens.fontText,
    '--target': tokens.target,
    '--radius': tokens.radius,
  },
  light: {
    '--mantine-color-body': tokens.paper,
    '--mantine-color-text': tokens.ink,
    '--mantine-color-dimmed': tokens.muted,
    '--mantine-color-placeholder': tokens.muted,
    '--mantine-color-default-border': tokens.edge,
    '--mantine-color-default': tokens.sheet,
    '--mantine-color-error': tokens.warn,
    '--mantine-color-anchor': tokens.accent,
  },
  dark: {},
});
