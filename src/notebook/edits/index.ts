export { apply } from './apply';
export { describe } from './describe';
export { mostCells, mostSizes, type Applied, type Edit } from './edit';
