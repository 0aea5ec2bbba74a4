import type { Plugin } from 'vite';

/** A second source of a face, in the older format. */
const fallback = /,\s*url\([^)]*\.woff\)\s*format\('woff'\)/gu;

/**
 * Leaves WOFF out of the style sheets of the fonts: every browser that this page is built for reads WOFF2, so the
 * second file of each face would be built and never fetched.
 */
export function woff2Only(): Plugin {
  return {
    name: 'woff2 only',
    enforce: 'pre',
    transform(css, id) {
      return /@fontsource\/.*\.css$/u.test(id) ? css.replace(fallback, '') : undefined;
    },
  };
}
