import type { counts as signature } from './counts.signature';
import type { DocsOf } from './function-docs';

export const counts: DocsOf<typeof signature> = {
  STS: { about: 'A number of stitches.', example: 'STS(2)' },
  ROWS: { about: 'A number of rows or rounds.', example: 'ROWS(6)' },
  GAUGE: {
    about:
      'Stitches or rows to the length, from one reading of a swatch or several: all counts over all lengths.',
    example: 'GAUGE(STS(14); CM(10))',
  },
  GUESSGAUGE: {
    about: 'A guess at the gauge with another hook or other needles, until a swatch takes its place.',
    example: 'GUESSGAUGE(body_sts; MM(6.5); MM(5.5))',
  },
  FABRIC: {
    about:
      'A fabric, as the stretches of a piece need it; where rows differ in height, with the height of each row of a repeat.',
    example: 'FABRIC(body_sts; body_rows)',
  },
  FITREPEAT: {
    about:
      'The count nearest to the wanted one that is a multiple of the repeat plus the edge; or the next up, or down.',
    example: 'FITREPEAT(finished_back * body_sts; 8; 3)',
  },
  FITREPEATS: {
    about:
      'A count that fits several repeats at once, such as lace over rib, and is odd or even where that is wanted.',
    example: 'FITREPEATS(finished_bust / 2 * body_sts; "nearest"; "odd"; 8; 3; 6; 1)',
  },
  FITTOGETHER: {
    about:
      'The stitches of one piece where two halves share the round, such as a back (1) and two fronts (2): "nearest" comes nearest to the whole, "growing" makes no piece smaller in a larger size.',
    example: 'FITTOGETHER(1; finished_bust * body_sts; 2 * CM(4) * body_sts; 1; 8; 3; 2; 8; 3)',
  },
  FITCHAIN: {
    about: 'The stitches of the first row where the multiple is given for the foundation chain.',
    example: 'FITCHAIN(finished_bust / 2 * body_sts; 8; 4; "nearest"; STS(1); "does not count")',
  },
  FOUNDATIONCHAIN: {
    about: 'The chains to make for a first row, with its turning chain, which may count as a stitch.',
    example: 'FOUNDATIONCHAIN(back_sts; STS(3); "counts")',
  },
  ROUNDCOUNT: {
    about:
      'A whole count from a wanted one: the nearest, the next up or down, or the nearest even or odd one.',
    example: 'ROUNDCOUNT(sleeve_length * cuff_rows; "even")',
  },
  FITMOTIFS: {
    about:
      'The stitches of motifs set in plain fabric that come near a count: of the five nearest ways, the first or the one told.',
    example: 'FITMOTIFS(finished_bust / 2 * body_sts; STS(10); STS(2); STS(4); STS(1); "flat")',
  },
  MOTIFS: {
    about: 'How many motifs FITMOTIFS sets.',
    example: 'MOTIFS(finished_bust / 2 * body_sts; STS(10); STS(2); STS(4); STS(1); "flat")',
  },
  MOTIFGAP: {
    about: 'The plain stitches FITMOTIFS leaves between two motifs.',
    example: 'MOTIFGAP(finished_bust / 2 * body_sts; STS(10); STS(2); STS(4); STS(1); "flat"; 2)',
  },
  NARROWMOTIFS: {
    about:
      'The count once every gap between motifs has lost a stitch; the gap must not become less than its least.',
    example: 'NARROWMOTIFS(6; STS(10); STS(4); STS(2); STS(1); "flat")',
  },
  STATED: {
    about:
      'The number a printed size list has for a size; a number below 0 stands for a dash, where the pattern has none.',
    example: 'STATED(2; 98; 106; 114)',
  },
  NEARESTSIZE: {
    about: 'Which size of a printed size list comes nearest to a wanted number: 1 for the first.',
    example: 'NEARESTSIZE(finished_bust / CM(1); 90; 98; 106)',
  },
  SIZENAMED: {
    about: 'The name of a size by its place in the list, 1 for the first.',
    example: 'SIZENAMED(2; "S"; "M"; "L")',
  },
};
