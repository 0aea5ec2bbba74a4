import type { Row, Stretch } from '../../craft';
import { joinsOf, type JoinEdge } from '../../notebook';
import { asRead, lengths, type Expected } from './expected';
import type { Garment, MeantPiece } from './garment';

/*
 * What the tables beside a schematic have to say. It is worked from the rows of the pieces; nothing here draws, and
 * nothing that draws is asked.
 */

type Values = readonly (number | null)[];

/** A line of the table: what is measured on a piece, in cm in each size; rounds lie flat at half their width. */
interface Line {
  readonly label: string;
  readonly values: Values;
  readonly round?: boolean;
}

/** The measurements by their letters, and what the joins marked on it join. */
export function schematicMeant(garment: Garment): Expected[] {
  const unit = garment.source.notebook.settings.length;
  const letters = lettersFrom('A');
  const lines = garment.pieces.flatMap((piece) =>
    new Measured(piece).lines().flatMap(({ label, values, round }): Expected[] => {
      const of = `${letters.next().value} ${asRead(piece.cell.label)}: ${label}`;
      const line = (name: string, cm: Values): Expected => ({
        name: 'measurement of the schematic',
        of: name,
        facts: { values: lengths(cm, unit), unit },
      });
      if (!round) return [line(of, values)];
      return [
        line(of, values),
        line(
          `${of}, laid flat`,
          values.map((cm) => (cm === null ? null : cm / 2)),
        ),
      ];
    }),
  );
  return [...lines, ...joinsMeant(garment)];
}

function joinsMeant({ source, pieces }: Garment): Expected[] {
  const written = new Map(pieces.map((piece) => [piece.cell.id, piece]));
  const letters = lettersFrom('a');
  return joinsOf(source.notebook).flatMap(({ label, edges }): Expected[] => {
    const meets = edges.flatMap((edge) => {
      const piece = written.get(edge.piece);
      return piece ? [edgeMeant(piece, edge)] : [];
    });
    if (meets.length === 0) return [];
    return [
      {
        name: 'join on the schematic',
        of: `${letters.next().value} ${asRead(label)}`,
        // Stretches under one name are one edge to whoever reads of them.
        facts: { 'what meets': [...new Set(meets)].join(' – ') },
      },
    ];
  });
}

function edgeMeant({ cell }: MeantPiece, { edge, stretch }: JoinEdge): string {
  const row = cell.worked === 'round' ? 'round' : 'row';
  const part = stretch === undefined ? undefined : nameOf(cell.stretches[stretch]!.label, stretch);
  const where = {
    start: `first ${row}`,
    end: `last ${row}`,
    row: `end of ${part}`,
    side: part === undefined ? 'row ends' : `row ends of ${part}`,
    left: `stitches of ${part}`,
  };
  return `${asRead(cell.label)}, ${where[edge]}`;
}

const nameOf = (label: string, at: number): string => asRead(label) || `stretch ${at + 1}`;

/** A, B … Z, AA, AB … */
function* lettersFrom(first: 'A' | 'a'): Generator<string, never> {
  for (let at = 0; ; at++) {
    let letter = '';
    for (let rest = at + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
      letter = String.fromCharCode(first.charCodeAt(0) + ((rest - 1) % 26)) + letter;
    }
    yield letter;
  }
}

const shapesOneRow = (stretch: Stretch | undefined): boolean =>
  stretch?.kind === 'evenly' || stretch?.kind === 'eachRepeat';
const isEnds = (stretch: Stretch): stretch is Stretch & { kind: 'leave' | 'add' } =>
  stretch.kind === 'leave' || stretch.kind === 'add';
const heightOf = (rows: readonly Row[]): number | null =>
  rows.length === 0 ? null : rows.reduce((sum, { height }) => sum + height, 0);

/** What is measured on a piece: its widths, the stitches left or added, and its lengths. */
class Measured {
  readonly #piece: MeantPiece;
  readonly #stretches: readonly Stretch[];

  constructor(piece: MeantPiece) {
    this.#piece = piece;
    this.#stretches = piece.worked[0]!.plan.stretches;
  }

  lines(): Line[] {
    return [...this.#widths(), ...this.#ends(), ...this.#lengths()];
  }

  #name(at: number): string {
    return nameOf(this.#piece.cell.stretches[at]!.label, at);
  }

  /** Something of the rows of some stretches, in each size. */
  #each(of: (rows: readonly Row[]) => number | null, from: number, to = from): (number | null)[] {
    return this.#piece.worked.map(({ rows }) =>
      of(rows.filter(({ stretch }) => stretch >= from && stretch <= to)),
    );
  }

  /** Where the piece begins, where a stretch ends at another width in any size, and where the piece ends. */
  #widths(): Line[] {
    const round = this.#piece.cell.worked === 'round';
    const word = round ? 'round' : 'width';
    const found: { label: string; values: (number | null)[] }[] = [
      { label: `${word} at the start`, values: this.#piece.worked.map(({ rows }) => rows[0]!.width) },
    ];
    this.#stretches.forEach((stretch, at) => {
      // Of shaped rows one after another only the last is measured.
      if (shapesOneRow(stretch) && shapesOneRow(this.#stretches[at + 1])) return;
      const values = this.#each((rows) => rows.at(-1)?.width ?? null, at);
      if (values.every((cm) => cm === null)) return;
      const before = found.at(-1)!.values;
      const same = values.every(
        (cm, size) => cm === null || before[size] === null || Math.abs(cm - before[size]!) < 1e-9,
      );
      if (!same) found.push({ label: `${word} after ${this.#name(at)}`, values });
      else values.forEach((cm, size) => (before[size] = cm ?? before[size]!));
    });
    const last = found.at(-1)!;
    last.values = this.#piece.worked.map(({ rows }) => rows.at(-1)!.width);
    last.label = found.length === 1 ? word : `${word} at the end`;
    return found.map((line) => ({ ...line, round }));
  }

  /** As wide as the stitches are in the row that they are left or added before. */
  #ends(): Line[] {
    return this.#stretches.flatMap((stretch, at): Line[] => {
      if (!isEnds(stretch)) return [];
      const [start, end] = (['atStart', 'atEnd'] as const).map((key) =>
        this.#piece.worked.map(({ plan, rows }) => {
          const one = plan.stretches[at] as typeof stretch;
          return one[key] / rows.find((row) => row.stretch > at)!.fabric.stitches;
        }),
      ) as [number[], number[]];
      const some = (values: number[]): boolean => values.some((cm) => cm > 0);
      if (start.every((cm, size) => cm === end[size])) {
        return some(start) ? [{ label: `${this.#name(at)}, each edge`, values: start }] : [];
      }
      return [
        ...(some(start) ? [{ label: `${this.#name(at)}, at the start of the row`, values: start }] : []),
        ...(some(end) ? [{ label: `${this.#name(at)}, at the end of the row`, values: end }] : []),
      ];
    });
  }

  /** Each part, from stitches left or added to the end where parts follow, and all of it. */
  #lengths(): Line[] {
    const parts = this.#parts();
    const to = this.#stretches.length;
    if (parts.length < 2) return [{ label: 'length', values: this.#each(heightOf, 0, to) }];
    return [
      ...parts.map((part) => ({
        label: this.#partName(part),
        values: this.#each(heightOf, part[0]!, part.at(-1)),
      })),
      ...this.#stretches.flatMap((stretch, at): Line[] => {
        if (!isEnds(stretch) || parts.filter(([first]) => first! > at).length < 2) return [];
        return [{ label: `from ${this.#name(at)} to the end`, values: this.#each(heightOf, at, to) }];
      }),
      { label: 'length in all', values: this.#each(heightOf, 0, to) },
    ];
  }

  /** Stretches with rows; gathering goes with what it gathers, single shaped rows with the stretch they lead to. */
  #parts(): number[][] {
    const parts: number[][] = [];
    let apart = true;
    this.#stretches.forEach((stretch, at) => {
      if (isEnds(stretch)) {
        apart = true;
        return;
      }
      if (this.#rows(at) === 0) return;
      const part = apart ? undefined : parts.at(-1);
      const leads =
        part?.every((one) => shapesOneRow(this.#stretches[one])) && this.#isOneFabric(part.at(-1)!, at);
      if (part && (stretch.kind === 'gather' || leads)) part.push(at);
      else parts.push([at]);
      apart = false;
    });
    return parts;
  }

  /** After the stretch that has more than half of its rows; where none has, after its first and its last. */
  #partName(part: readonly number[]): string {
    const rows = part.map((at) => this.#rows(at));
    const most = Math.max(...rows);
    const all = rows.reduce((sum, many) => sum + many, 0);
    if (part.length === 1 || most * 2 > all) return this.#name(part[rows.indexOf(most)]!);
    return `${this.#name(part[0]!)} … ${this.#name(part.at(-1)!)}`;
  }

  /** The rows of a stretch in all sizes together. */
  #rows(at: number): number {
    return this.#each((rows) => rows.length, at).reduce<number>((sum, many) => sum + many!, 0);
  }

  #isOneFabric(a: number, b: number): boolean {
    return this.#piece.worked.every(({ rows }) => {
      const [one, other] = [a, b].map((at) => rows.find(({ stretch }) => stretch === at)?.fabric);
      return !one || !other || (one.stitches === other.stitches && one.rows === other.rows);
    });
  }
}
