export { tableOf } from '../../notebook/name-table';
