import { numbered } from '../../notebook/numbered';
import type { Cell, Entry, PieceCell, PieceStretch } from '../../notebook';
import type { PerSize } from '../../words/printed';
import { f, formula, piece, value } from '../cells';
import { statedCell } from './adapting';
import { pickedUpAlongArmhole } from './along-armhole';
import { fabricOf, type Fabric } from './fabrics';
import { leftCells } from './left-stitches';
import type { MadePart, Making } from './making';
import {
  besides,
  fittedCell,
  RowChain,
  rowsCell,
  sizeOfRows,
  sizeOfStitches,
  type CountRule,
} from './numbers';
import type { Part, RowZone, StitchZone } from './parts';
import type { Shape } from './shape-of';
import { shortName } from './shelf';

/** Makes a piece both ways, with the cells of its numbers. */
export function makePart(making: Making, part: Part): MadePart {
  const { adapting, fabrics, scales, made } = making;
  const { pattern, sections, shelf } = adapting;
  const { label } = part.piece;
  const short = shortName(label);
  const main = fabricOf(part, fabrics);
  const sizes = pattern.sizes.length;
  const inSleeve = part.role === 'sleeve';
  const rule = part.piece.multiple;
  const keeps = (values: PerSize): boolean =>
    rule !== undefined &&
    values.every(
      (count) =>
        count === null || (count >= rule.multiple + rule.plus && (count - rule.plus) % rule.multiple === 0),
    );
  const ruleFor = (values: PerSize, from?: CountRule['from']): CountRule => ({
    ...(rule && keeps(values) ? { multiple: rule.multiple, plus: rule.plus } : { multiple: 1, plus: 0 }),
    ...(from ? { from } : {}),
  });
  const count = (values: PerSize, zone: StitchZone, what: string, called: string): Cell =>
    statedCell(adapting, {
      values,
      unit: 'stitches',
      size: sizeOfStitches[zone],
      label: `${label}: ${what}`,
      name: `printed_${short}_${called}`,
    });
  const fitted = (printed: Cell, zone: StitchZone, given: CountRule, what: string, called: string): Cell => {
    const cell = fittedCell(adapting, {
      printed,
      across: scales.across(zone, main),
      rule: given,
      label: `${label}: ${what}`,
      name: `${short}_${called}_sts`,
    });
    besides(adapting, label, what, printed, cell);
    return cell;
  };

  const start = startOf();
  const stretches: { printed: PieceStretch; mine: PieceStretch; zone: RowZone; rows: boolean }[] = [];
  const used = new Set<string>();
  const chains = new Map<string, RowChain>();
  if (part.base) continued(part.base, chains);
  let now = start.mine.name;
  let before: PerSize = part.piece.start.count;
  part.shapes.forEach((shape, at) => {
    const name = freeName(used, shortName(shape.label).slice(0, 20).replace(/_+$/u, '') || 'part');
    const zone = part.rowZones[at]!;
    const fabric = fabrics.for(shape.fabric);
    const made = stretchOf(shape, name, zone, part.stitchZones[at]!, fabric);
    stretches.push({ ...made, zone, rows: shape.kind !== 'leave' && shape.kind !== 'add' });
    before = shape.ends;
  });

  const asPrinted = piece(
    `${label}, as printed`,
    part.piece.worked,
    start.printed.name,
    stretches.map((one) => one.printed),
    { name: `${short}_printed`, ends: part.piece.ends },
  );
  const printed = shelf.put(sections.printedPieces, { ...asPrinted, aside: true }) as PieceCell;
  const mine = shelf.put(
    sections.pieces,
    piece(
      label,
      part.piece.worked,
      startFormula(),
      stretches.map((one) => one.mine),
      {
        name: `${short}_again`,
        ends: part.piece.ends,
        ...(part.piece.make > 1 ? { note: `Make ${part.piece.make}.` } : {}),
      },
    ),
  ) as PieceCell;
  const parting = partingOf(mine);
  return {
    part,
    printed,
    mine,
    start: start.mine,
    stretches: stretches.map(({ mine: { name }, zone, rows }) => ({ name, zone, rows })),
    ...(parting ? { parting } : {}),
  };

  /** Stitches that are gone on with are told by the piece they were left on, so that the words can name it. */
  function startFormula(): string {
    const base = made.find((one) => one.part === part.base);
    const parting = base?.parting;
    const side = base?.part.piece.parted?.side;
    const same = side && part.piece.start.count.every((count, size) => count === side[size]);
    return base && parting && same ? `(${base.mine.name}_end - ${parting.middle.name}) / 2` : start.mine.name;
  }

  function startOf(): { printed: Cell; mine: Cell } {
    const { count: values, kind } = part.piece.start;
    const zone = part.startZone;
    const what = kind === 'new' ? 'start' : kind === 'from' ? 'stitches gone on with' : 'stitches picked up';
    const asPrinted = count(values, zone, what, 'start');
    const alongArmhole = pickedUpAlongArmhole(making, part, asPrinted, what);
    if (alongArmhole) return { printed: asPrinted, mine: alongArmhole };
    return { printed: asPrinted, mine: fitted(asPrinted, zone, ruleFor(values), what, 'start') };
  }

  function rowsOf(
    shape: Shape,
    zone: RowZone,
    fabric: Fabric,
    name: string,
  ): { printed: Entry; mine: Entry; cells?: readonly [Cell, Cell] } {
    const key = `${zone} ${fabric.mine}`;
    const chain = chains.get(key) ?? new RowChain(sizes);
    chains.set(key, chain);
    if (shape.fixed) {
      chain.fixed(shape.rows);
      return { printed: f('ROWS(1)'), mine: f('ROWS(1)') };
    }
    const what = `${shape.label.toLowerCase()}, rows`;
    const cell = statedCell(adapting, {
      values: shape.rows,
      unit: 'rows',
      size: sizeOfRows(zone, inSleeve),
      label: `${label}: ${what}`,
      name: `printed_${short}_${name}`,
    });
    const mine = rowsCell(
      adapting,
      chain.elastic(cell.name, shape.rows, scales.down(zone, fabric)),
      `${label}: ${what}`,
      `${short}_${name}_rows_again`,
    );
    besides(adapting, label, what, cell, mine);
    return { printed: f(cell.name), mine: f(mine.name), cells: [cell, mine] };
  }

  function stretchOf(
    shape: Shape,
    name: string,
    zone: RowZone,
    stitchZone: StitchZone,
    fabric: Fabric,
  ): { printed: PieceStretch; mine: PieceStretch } {
    const base = { name, label: shape.label };
    const both = (
      of: (side: 'printed' | 'mine') => object,
    ): { printed: PieceStretch; mine: PieceStretch } => ({
      printed: { ...base, fabric: fabric.printed, ...of('printed') } as PieceStretch,
      mine: { ...base, fabric: fabric.mine, ...of('mine') } as PieceStretch,
    });
    switch (shape.kind) {
      case 'even': {
        const rows = rowsOf(shape, zone, fabric, name);
        return both((side) => ({ kind: 'even', rows: rows[side] }));
      }
      case 'taper': {
        const rows = rowsOf(shape, zone, fabric, name);
        const to = count(shape.ends, stitchZone, `${shape.label.toLowerCase()}, to`, `${name}_to`);
        const step = shape.way === 'dec' ? '-' : '+';
        const end = shape.fixed
          ? `${now} ${step} STS(${shape.perRow})`
          : fitted(
              to,
              stitchZone,
              ruleFor(shape.ends, { count: now, perRow: shape.perRow }),
              `${shape.label.toLowerCase()}, to`,
              `${name}_to`,
            ).name;
        now = end;
        const mine = f(end);
        const plain = (values: PerSize, called: 'before' | 'after'): Record<'printed' | 'mine', Entry> => {
          if (!rows.cells || values.every((many) => !many)) return { printed: value(0), mine: value(0) };
          const [over, again] = rows.cells;
          const cell = statedCell(adapting, {
            values,
            unit: 'rows',
            size: sizeOfRows(zone, inSleeve),
            label: `${label}: ${shape.label.toLowerCase()}, plain rows ${called}`,
            name: `printed_${short}_${name}_${called}`,
          });
          return {
            printed: f(cell.name),
            mine: f(
              `IF(${over.name} > ROWS(0); ROUND(${cell.name} * ${again.name} / ${over.name}); ROWS(0))`,
            ),
          };
        };
        const [lead, tail] = [plain(shape.before, 'before'), plain(shape.after, 'after')];
        return both((side) => ({
          kind: 'taper',
          to: side === 'printed' ? f(to.name) : mine,
          over: rows[side],
          perRow: value(shape.perRow),
          every: shape.every,
          before: lead[side],
          after: tail[side],
          order: shape.order,
        }));
      }
      case 'evenly': {
        rowsOf(shape, zone, fabric, name);
        const to = count(shape.ends, stitchZone, `${shape.label.toLowerCase()}, to`, `${name}_to`);
        const mine = fitted(
          to,
          stitchZone,
          ruleFor(shape.ends),
          `${shape.label.toLowerCase()}, to`,
          `${name}_to`,
        );
        now = mine.name;
        return both((side) => ({
          kind: 'evenly',
          to: f(side === 'printed' ? to.name : mine.name),
          ends: 'half',
        }));
      }
      case 'eachRepeat': {
        rowsOf(shape, zone, fabric, name);
        const repeats = statedCell(adapting, {
          values: shape.repeats,
          unit: 'number',
          size: sizeOfStitches[stitchZone],
          label: `${label}: ${shape.label.toLowerCase()}, repeats`,
          name: `printed_${short}_${name}_repeats`,
        });
        const fills = (plus: number, multiple: number): boolean =>
          shape.repeats.every(
            (many, size) =>
              many === null ||
              (before[size] !== null &&
                before[size] !== undefined &&
                many * multiple + plus === before[size]),
          );
        const mine =
          rule && fills(rule.plus, rule.multiple)
            ? `(${now} - STS(${rule.plus})) / STS(${rule.multiple})`
            : `ROUND(${repeats.name} * ${scales.across(stitchZone, main)})`;
        const cell = shelf.put(
          sections.again,
          formula(`${label}: ${shape.label.toLowerCase()}, repeats`, mine, {
            name: `${short}_${name}_repeats_again`,
          }),
        );
        besides(adapting, label, `${shape.label.toLowerCase()}, repeats`, repeats, cell);
        now = `(${now} ${shape.by < 0 ? '-' : '+'} STS(${Math.abs(shape.by)}) * ${cell.name})`;
        return both((side) => ({
          kind: 'eachRepeat',
          repeats: f(side === 'printed' ? repeats.name : cell.name),
          by: value(shape.by),
        }));
      }
      case 'leave':
      case 'add': {
        const side = (values: PerSize): Record<'printed' | 'mine', Entry> & { mineText: string } => {
          if (values.every((many) => !many)) return { printed: value(0), mine: value(0), mineText: 'STS(0)' };
          const { printed: cell, mine } = leftCells(making, part, shape, values, stitchZone);
          besides(adapting, label, `${shape.label.toLowerCase()}, stitches at one end`, cell, mine);
          return { printed: f(cell.name), mine: f(mine.name), mineText: mine.name };
        };
        const [atStart, atEnd] = [side(shape.atStart), side(shape.atEnd)];
        now =
          `(${now} ${shape.kind === 'leave' ? '-' : '+'} ${atStart.mineText} ${shape.kind === 'leave' ? '-' : '+'} ${atEnd.mineText})`.replace(
            / [-+] STS\(0\)/gu,
            '',
          );
        return both((which) => ({ kind: shape.kind, atStart: atStart[which], atEnd: atEnd[which] }));
      }
    }
  }

  function partingOf(mine: PieceCell): { side: Cell; middle: Cell } | undefined {
    const { parted } = part.piece;
    if (!parted) return undefined;
    const zone = part.startZone;
    const side = fitted(
      count(parted.side, zone, 'each side of the last row', 'side'),
      zone,
      { multiple: 1, plus: 0 },
      'each side of the last row',
      'side',
    );
    const printedMiddle = count(parted.middle, zone, 'middle of the last row', 'middle');
    const middle = shelf.put(
      sections.again,
      formula(`${label}: middle of the last row`, `${mine.name}_end - 2 * ${side.name}`, {
        name: `${short}_middle_sts`,
      }),
    );
    besides(adapting, label, 'middle of the last row', printedMiddle, middle);
    return { side, middle };
  }

  /** A piece that goes on with another's stitches goes on with its rows, too. */
  function continued(base: Part, into: Map<string, RowChain>): void {
    if (base.base) continued(base.base, into);
    base.shapes.forEach((shape, at) => {
      const zone = base.rowZones[at]!;
      const fabric = fabrics.for(shape.fabric);
      const key = `${zone} ${fabric.mine}`;
      const chain = into.get(key) ?? new RowChain(sizes);
      into.set(key, chain);
      if (shape.kind === 'leave' || shape.kind === 'add') return;
      if (shape.fixed) chain.fixed(shape.rows);
      else {
        const cell = statedCell(adapting, {
          values: shape.rows,
          unit: 'rows',
          size: sizeOfRows(zone, base.role === 'sleeve'),
          label: `${base.piece.label}: rows`,
          name: 'printed_rows',
        });
        chain.elastic(cell.name, shape.rows, scales.down(zone, fabric));
      }
    });
  }
}

function freeName(used: Set<string>, wished: string): string {
  for (let at = 0; ; at++) {
    const name = numbered(wished, at);
    if (used.has(name)) continue;
    used.add(name);
    return name;
  }
}
