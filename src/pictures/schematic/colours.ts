import { themes, type Theme } from '../charts';
import type { SchematicSpec } from './types';

/** What a drawing is drawn in; for paper its own paper and the pieces are white, so that no tint is printed. */
export function coloursOf({ theme, onWhite = false }: Pick<SchematicSpec, 'theme' | 'onWhite'>): Theme {
  return onWhite ? { ...themes[theme], paper: '#ffffff', leaf: '#ffffff' } : themes[theme];
}
