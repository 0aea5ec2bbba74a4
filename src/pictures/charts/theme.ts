export type ThemeName = 'light' | 'dark';

/** The colours of the page and its pictures. Each theme's `ink`, `soft`, `accent` and `trouble` can be read on its `paper` and `leaf`. */
export interface Theme {
  /** What everything lies on. */
  readonly paper: string;
  /** A sheet laid on the paper: a tooltip, a menu, an open cell. */
  readonly leaf: string;
  readonly ink: string;
  /** Quieter text: units, ticks, notes. */
  readonly soft: string;
  /** The ruling of the paper; only decoration, and as faint as that. */
  readonly rule: string;
  /** Every tenth line of the ruling. */
  readonly tenth: string;
  /** The border of something that can be typed in or pressed. */
  readonly edge: string;
  /** Links, focus, what is chosen. */
  readonly accent: string;
  readonly trouble: string;
  /** Behind what has just changed. */
  readonly wash: string;
}

/**
 * Our own choice: warm paper and iron-gall ink, with indigo for what is chosen and madder for trouble. Contrast is
 * tested against WCAG 2.2 (AA: 4.5 for text, 3 for borders of controls).
 */
export const themes: Readonly<Record<ThemeName, Theme>> = {
  light: {
    paper: '#fbf8f1',
    leaf: '#fffdf8',
    ink: '#2b2a26',
    soft: '#625e54',
    rule: '#e9e1d0',
    tenth: '#d6cab1',
    edge: '#8a8474',
    accent: '#2c4f87',
    trouble: '#a1331f',
    wash: '#f5e9bf',
  },
  dark: {
    paper: '#201e1a',
    leaf: '#2a2823',
    ink: '#ece6d9',
    soft: '#b3ab9a',
    rule: '#312e28',
    tenth: '#45413a',
    edge: '#8e8777',
    accent: '#9dbcf0',
    trouble: '#f2998a',
    wash: '#453c1c',
  },
};
