import type { Row } from '../../craft';
import type { PrintedPart, VerifiedPiece } from '../verify';
import { compareShaping } from './compare-shaping';
import type { Garment } from './garment';
import { pieceMeant, type PieceMeant } from './piece-meant';
import { pieceSays, type InOwnWords } from './piece-says';

export interface PieceWrong {
  /** The block of the piece; undefined where the piece as a whole is meant. */
  readonly block?: number;
  readonly problem: string;
}

interface PieceCompared {
  readonly wrong: readonly (PieceWrong & { readonly size?: number })[];
  /** Blocks that nothing can be said of. */
  readonly unread: readonly number[];
}

/** A piece as it was read: what following it comes to in each size. */
export interface ReadPiece {
  readonly kind: 'piece';
  readonly cell: string;
  readonly bySize: readonly VerifiedPiece[];
}

/** What compares a piece, as it was followed in every size, with its rows and with how it is meant. */
export function comparePiece(
  garment: Garment,
): (read: ReadPiece, part: PrintedPart, inOwnWords: InOwnWords) => PieceCompared {
  const meant = new Map(
    garment.pieces.map((piece) => [
      piece.cell.id,
      garment.sizes.map((_size, sizeIndex) => pieceMeant(garment, piece, sizeIndex)),
    ]),
  );
  const unit = garment.source.notebook.settings.length;
  return ({ cell, bySize }, _part, inOwnWords) => {
    const sizes = meant.get(cell);
    if (!sizes)
      return {
        wrong: [{ problem: 'The notebook has no such piece, or it cannot be calculated.' }],
        unread: [],
      };
    const unread = new Set<number>();
    const wrong = sizes.flatMap((one, size) => {
      const { problems, says, counts, ended } = bySize[size]!;
      const at = ({ line, problem }: { line?: number; problem: string }) => ({
        size,
        problem,
        ...(line === undefined ? {} : { block: line }),
      });
      if (problems.length > 0) return problems.map(at);
      const stated = pieceSays(says, one, inOwnWords, unit);
      for (const line of stated.unread) unread.add(line);
      const { plan, rows, edge } = one;
      const labels = one.stretches.map(({ label }) => label);
      return [
        ...compareShaping(says, plan, rows, { labels, edge }).map(at),
        ...stated.wrong.map(at),
        ...(ended ? [] : [at({ problem: 'It does not say what becomes of the last stitches.' })]),
        ...rowsWrong(one, counts).map(at),
      ];
    });
    return { wrong, unread: [...unread] };
  };
}

function rowsWrong({ rows }: PieceMeant, counts: readonly number[]): { problem: string }[] {
  const row = rows.findIndex(({ count }: Row, number) => counts[number] !== count);
  if (row >= 0) {
    return [
      {
        problem: `Row ${row + 1} has ${rows[row]!.count} stitches in the notebook and ${counts[row] ?? 'no'} in the text.`,
      },
    ];
  }
  if (rows.length === counts.length) return [];
  return [{ problem: `The piece has ${rows.length} rows in the notebook and ${counts.length} in the text.` }];
}
