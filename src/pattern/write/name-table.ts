export { tableOf } from '../../notebook';
