export { choosableIn, isOnSheet, putOnSheet, removeFromSheet } from './choice';
