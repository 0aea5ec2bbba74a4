import type { standard as signature } from './standard.signature';
import type { DocsOf } from './function-docs';

export const standard: DocsOf<typeof signature> = {
  IF: {
    about: 'One result where a condition holds, another where it does not.',
    example: 'IF(bust > CM(110); STS(4); STS(2))',
  },
  AND: { about: 'Whether all conditions hold.', example: 'AND(back_sts > STS(40); back_sts < STS(90))' },
  OR: { about: 'Whether any condition holds.', example: 'OR(back_sts = STS(67); back_sts = STS(75))' },
  NOT: { about: 'Whether a condition does not hold.', example: 'NOT(back_sts = front_sts)' },
  MIN: { about: 'The least.', example: 'MIN(bust; hips)' },
  MAX: { about: 'The greatest.', example: 'MAX(bust; hips)' },
  SUM: { about: 'All added up.', example: 'SUM(left_front; back_width; right_front)' },
  AVERAGE: { about: 'The mean.', example: 'AVERAGE(bust; hips)' },
  ABS: { about: 'The size without its sign.', example: 'ABS(bust - hips)' },
  INT: { about: 'Rounded down to a whole number.', example: 'INT(finished_bust * body_sts)' },
  ROUND: { about: 'Rounded to a number of decimal places.', example: 'ROUND(finished_bust * body_sts; 0)' },
  ROUNDUP: { about: 'Rounded away from zero.', example: 'ROUNDUP(back_length * body_rows; 0)' },
  ROUNDDOWN: { about: 'Rounded toward zero.', example: 'ROUNDDOWN(back_length * body_rows; 0)' },
  MOD: { about: 'What is left over.', example: 'MOD(back_sts; STS(8))' },
  SQRT: { about: 'The square root.', example: 'SQRT(PIECEAREA(back))' },
  TRUE: { about: 'Yes.', example: 'TRUE()' },
  FALSE: { about: 'No.', example: 'FALSE()' },
  PI: { about: 'The ratio of a circumference to its diameter.', example: 'PI() * CM(18)' },
};
