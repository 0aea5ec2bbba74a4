export { whatIfOverlays, whatIfsVersion } from './overlays';
export { unitOf } from './typed-change';
