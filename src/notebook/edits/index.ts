export { apply } from './apply';
export { describe } from './describe';
export { mostCells, mostSizes, mostWhatIfs, mostWhatIfsOn, type Applied, type Edit } from './edit';
