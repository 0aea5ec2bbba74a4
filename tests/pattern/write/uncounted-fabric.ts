import type { Swatch } from '../../../src/notebook';

/** A swatch whose gauge is of no interest: what it is worked in, for words. */
export function uncountedFabric(stitch?: Swatch['stitch']): Swatch {
  return {
    kind: 'swatch',
    id: 'fabric',
    name: 'fabric',
    label: 'Fabric',
    worked: '',
    stitches: [],
    rows: [],
    ...(stitch ? { stitch } : {}),
  };
}
