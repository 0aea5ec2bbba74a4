import { latestTime } from '../../storage';

/** Clocks of one device, or of two windows, may be a little apart. */
const aLittle = 60_000;

/**
 * A time of day, with the day before it where that is not today. One that has not come yet was written by another
 * setting of the clock, and it says so; one that is no time at all is not known.
 *
 * @param time milliseconds since 1970
 * @example timeOf(NaN) // 'time unknown'
 */
export function timeOf(time: number, now = Date.now()): string {
  if (typeof time !== 'number' || !(time > 0 && time <= latestTime)) return 'time unknown';
  const then = new Date(time);
  const today = new Date(now).toDateString() === then.toDateString();
  const shown = new Intl.DateTimeFormat(undefined, {
    ...(today ? {} : { day: 'numeric', month: 'short', year: 'numeric' }),
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).format(then);
  return time > now + aLittle ? `${shown} (clock set differently)` : shown;
}
