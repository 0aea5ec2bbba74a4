export { apply } from './apply';
export { describe } from './describe';
export {
  furthestBack,
  longestWording,
  mostOnClassSheet,
  mostCells,
  mostSizes,
  mostWordings,
  type Applied,
  type Edit,
} from './edit';
