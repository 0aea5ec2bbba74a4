/** A time of day, with the day before it where that is not today. */
export function timeOf(time: number): string {
  const then = new Date(time);
  const today = new Date().toDateString() === then.toDateString();
  return new Intl.DateTimeFormat(undefined, {
    ...(today ? {} : { day: 'numeric', month: 'short', year: 'numeric' }),
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).format(then);
}
