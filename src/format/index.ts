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
