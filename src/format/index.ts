export {
  readCount,
  readGauge,
  readLength,
  readNumber,
  readPercent,
  withoutWord,
  writeFineLength,
  writeGauge,
  writeLength,
  writeNumber,
  writePercent,
} from './quantities';
export { bracketed, bySize } from './bracketed';
export { capital } from './capital';
export { chartLabels, measureLabels, pointLabels } from './chart-words';
export { formatMessage } from './messages';
export { joinWithAnd } from './join-with-and';
export { numbered } from './numbered';
export { uncapital } from './uncapital';
