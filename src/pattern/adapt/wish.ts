import { capital } from '../../format';
import { type Cell, formula, measure, value } from '../../notebook';
import type { PerSize } from '../read';
import { listOf, sizeNames, statedCell, type Adapting, type SizeFor } from './adapting';

/** A finished measurement that the fitting follows: the pattern's, by the size that is taken, and the wanted one. */
export interface Wish {
  readonly stated: string;
  readonly wanted: string;
  readonly values: PerSize;
}

const titles: Readonly<Record<SizeFor, string>> = {
  bust: 'at the bust',
  arm: 'at the upper arm',
  length: 'for the length of the body',
  sleeve: 'for the length of the sleeve',
};

/** What a wish is made of. */
interface Wished {
  readonly size: SizeFor;
  /** The finished measurement in the pattern's sizes, where it has any. */
  readonly values: PerSize | undefined;
  readonly label: string;
  /** Whether the pattern states it, or it comes of the counts. */
  readonly isStated: boolean;
  /** The maker's own cell, which begins as the pattern is. */
  readonly mine: (values: PerSize) => Cell;
  /** Whose size is taken where the sizes differ in nothing that could be chosen by this one. */
  readonly alikeAs: SizeFor | undefined;
}

const usable = (values: PerSize | undefined): values is PerSize =>
  values?.some((cm) => cm !== null && cm > 0) ?? false;

/**
 * Puts down which size is taken for one measurement, and what is wanted of it; undefined where the pattern has no number
 * for it, so that nothing can be chosen by it.
 */
export function putWish(adapting: Adapting, of: Wished): Wish | undefined {
  const { size, values } = of;
  if (!usable(values)) {
    const middle = Math.floor((adapting.pattern.sizes.length - 1) / 2);
    putSizeTaken(adapting, size, size === 'bust' ? String(middle + 1) : sizeNames.bust);
    return undefined;
  }
  const { collector, sections } = adapting;
  const wished = collector.put(sections.wishes, of.mine(values));
  const alike = of.alikeAs !== undefined && values.every((cm) => cm === values[0]);
  const nearest = alike ? sizeNames[of.alikeAs!] : `NEARESTSIZE(${wished.name} / CM(1); ${listOf(values)})`;
  const choice = collector.put(
    sections.wishes,
    measure(`Another size ${titles[size]}`, 'number', value(0), {
      name: `${size}_choice`,
      note: '0 takes the nearest; 1 is the pattern’s first size, 2 its second, and so on.',
    }),
  );
  putSizeTaken(adapting, size, `IF(${choice.name} > 0; ${choice.name}; ${nearest})`);
  const called = adapting.pattern.sizes.map((one) => `"${one.replaceAll('"', '')}"`).join('; ');
  collector.put(
    sections.wishes,
    formula(`Size taken ${titles[size]}`, `SIZENAMED(${sizeNames[size]}; ${called})`, {
      name: `${sizeNames[size]}_called`,
    }),
  );
  return wanted(adapting, of, values, wished);
}

/** The cell of the size that is taken: in the pattern's own columns each its own. */
function putSizeTaken({ collector, sections }: Adapting, size: SizeFor, mine: string): void {
  collector.put(
    sections.wishes,
    formula(`Which size is taken ${titles[size]}, 1 the first`, `IF(own_size > 0; own_size; ${mine})`, {
      name: sizeNames[size],
    }),
  );
}

/** The stated measurement and the wanted one: in the pattern's own columns the same. */
function wanted(
  adapting: Adapting,
  { size, label, isStated }: Pick<Wished, 'size' | 'label' | 'isStated'>,
  values: PerSize,
  wished: Cell,
): Wish {
  const name = label.replaceAll(' ', '_');
  const stated = statedCell(adapting, {
    values,
    unit: 'length',
    size,
    label: isStated ? `Stated ${label}` : `${capital(label)}, from the counts`,
    name: `stated_${name}`,
  });
  const cell = adapting.collector.put(
    adapting.sections.wishes,
    formula(`Wanted ${label}`, `IF(own_size > 0; ${stated.name}; ${wished.name})`, {
      name: `wanted_${name}`,
      note: 'In the pattern’s own columns, what the pattern states; in yours, your wish.',
    }),
  );
  return { stated: stated.name, wanted: cell.name, values };
}
