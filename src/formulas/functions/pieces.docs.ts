import type { pieces as signature } from './pieces.signature';
import type { DocsOf } from './function-docs';

export const pieces: DocsOf<typeof signature> = {
  EVENROWS: { about: 'A stretch of a piece worked without shaping.', example: 'EVENROWS(ROWS(24); body)' },
  TAPERROWS: {
    about: 'A stretch of a piece that comes to another count by shaping rows spread over its length.',
    example: 'TAPERROWS(STS(38); ROWS(60); STS(2); 1; ROWS(0); ROWS(2); "longFirst"; sleeve_fabric)',
  },
  EVENLYROW: {
    about:
      'One row that comes to another count by shaping spread evenly across it, with half or whole gaps at the ends.',
    example: 'EVENLYROW(STS(83); "half"; body)',
  },
  REPEATSROW: {
    about: 'One row in which every repeat gains so many stitches, or loses them where it is negative.',
    example: 'REPEATSROW(9; STS(-1); body)',
  },
  GATHERROUNDS: {
    about: 'Rounds of "so many plain, 2 together" that draw the count in, as GATHER tells them.',
    example: 'GATHERROUNDS(STS(40); ROWS(3); body)',
  },
  LEAVESTITCHES: {
    about: 'Stitches left, or bound off, at the start and the end of the row that follows.',
    example: 'LEAVESTITCHES(STS(4); STS(4); body)',
  },
  ADDSTITCHES: {
    about: 'Stitches cast on, or chained, at the start and the end of the row that follows.',
    example: 'ADDSTITCHES(STS(4); STS(4); body)',
  },
  COUNTEDROWS: {
    about: 'Rows whose counts are told one by one.',
    example: 'COUNTEDROWS(body; STS(75); STS(73); STS(70))',
  },
  PIECE: {
    about:
      'A piece: worked flat (with "flat from WS" its first row is on the wrong side) or in the round, from a first count through its stretches, row by row.',
    example: 'PIECE("flat"; back_sts; "bound off"; EVENROWS(back_rows; body))',
  },
  PIECELENGTH: { about: 'The length of a piece: the heights of its rows.', example: 'PIECELENGTH(sleeve)' },
  PIECEROWS: { about: 'The rows, or rounds, of a piece.', example: 'PIECEROWS(sleeve)' },
  PIECECOUNT: {
    about: 'The stitches after a row of a piece, the first row being 1.',
    example: 'PIECECOUNT(sleeve; ROWS(10))',
  },
  PIECEEND: { about: 'The stitches of the last row of a piece.', example: 'PIECEEND(sleeve)' },
  PIECEWIDTH: {
    about: 'The width of a piece at a length from its start; in the round, the circumference.',
    example: 'PIECEWIDTH(sleeve; CM(0))',
  },
  PIECEAREA: { about: 'The area of a piece: width times height, row by row.', example: 'PIECEAREA(back)' },
  PIECESTITCHES: { about: 'All the stitches worked in a piece.', example: 'PIECESTITCHES(back)' },
  STRETCHEND: {
    about: 'The stitches of the last row of one stretch of a piece.',
    example: 'STRETCHEND(sleeve; 1)',
  },
  STRETCHROWS: {
    about:
      'The rows, or rounds, of one stretch of a piece; a stretch that only leaves or adds stitches has none.',
    example: 'STRETCHROWS(sleeve; 1)',
  },
  STRETCHLENGTH: {
    about: 'The length of one stretch of a piece: the heights of its rows.',
    example: 'STRETCHLENGTH(sleeve; 1)',
  },
  EDGELENGTH: {
    about:
      'The length of an edge of a piece worked flat, right side facing, along every step of it: of the whole piece, of one stretch, or of one to another; "shaped" is the edge that changes more.',
    example: 'EDGELENGTH(back; "left")',
  },
};
