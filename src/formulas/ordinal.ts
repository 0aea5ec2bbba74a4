/** @example ordinal(22) // '22nd' */
export function ordinal(number: number): string {
  const teen = number % 100 >= 11 && number % 100 <= 13;
  const ending = teen ? 'th' : (['th', 'st', 'nd', 'rd'][number % 10] ?? 'th');
  return `${number}${ending}`;
}
