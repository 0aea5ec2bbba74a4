/* Schematics and silhouettes as SVG: pure, without a page. */
export type { PlannedSize, SchematicSpec } from './types';
export { joinsInWords } from './joins-in-words';
export { missingOf } from './missing';
export { schematicDrawn, schematicSvg, titleOf } from './schematic-svg';
export { schematicTable } from './schematic-table';
export { silhouetteDrawn, silhouetteTitle } from './silhouette-svg';
export { silhouetteTable } from './silhouette-table';
export { layoutOf } from './layout-of';
