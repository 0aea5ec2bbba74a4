export { apply } from './apply';
export { describe } from './describe';
export {
  furthestBack,
  longestWording,
  mostCells,
  mostOnClassSheet,
  mostSizes,
  mostWhatIfs,
  mostWhatIfsOn,
  mostWordings,
  type Applied,
  type Edit,
} from './edit';
