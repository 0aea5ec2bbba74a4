export { choosableIn, isOnSheet, putOnSheet, takeOffSheet } from './choice';
