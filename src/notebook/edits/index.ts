export { apply } from './apply';
export { describe } from './describe';
export {
  longestWording,
  mostCells,
  mostSizes,
  mostWhatIfs,
  mostWhatIfsOn,
  mostWordings,
  type Applied,
  type Edit,
} from './edit';
