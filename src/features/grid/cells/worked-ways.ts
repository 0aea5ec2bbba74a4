/** How a piece may be worked, and how the ends of a spacing over a flat row are: as choices in words. */
export const flatOrRound = [
  ['flat', 'flat'],
  ['round', 'in the round'],
] as const;

export const halfOrWholeGap = [
  ['half', 'half a gap'],
  ['whole', 'a whole gap'],
] as const;
