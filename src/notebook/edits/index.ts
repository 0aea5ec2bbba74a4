export { apply } from './apply';
export { describe } from './describe';
export { longestWording, mostCells, mostSizes, mostWordings, type Applied, type Edit } from './edit';
