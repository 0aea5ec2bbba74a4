/* Schematics and silhouettes as SVG: pure, without a page. */
export type { JoinEdge, PlannedSize, SchematicJoin, SchematicPiece, SchematicSpec } from './types';
export { joinsInWords, type JoinInWords } from './joins-in-words';
export { missingOf, type Missing } from './missing';
export { schematicDrawn, schematicSvg, titleOf } from './schematic-svg';
export { schematicTable } from './schematic-table';
export { silhouetteDrawn, silhouetteTitle } from './silhouette-svg';
export { silhouetteTable } from './silhouette-table';
export { joinsOf, layOf } from './joins-of';
