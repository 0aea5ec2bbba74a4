import {
  combineUncertainty,
  countUncertainty,
  gaugeOf,
  neighbourChance,
  t95,
  whole,
  widthUncertainty,
  type Rule,
} from '../../craft';
import { length, timesUnit } from '..';
import { amount, dimensionOf, lengthOf, numberIn as n, plainOf, type Amount } from '../../explain/amount';
import type { Shows, Work } from '../../explain/work';
import { multipleOf, ruleInWords } from './fitted.explain';
import { pairsOf } from './pairs.explain';

/** A sheet holds no endless number: so many degrees of freedom stand for endlessly many. */
const endless = 1e9;
const freedom = (held: Amount): number => (n(held) >= endless ? Infinity : n(held));
const inWords = (dof: number): string => (dof === Infinity ? 'endless' : String(Number(dof.toPrecision(3))));

function readings(given: readonly Amount[]) {
  return pairsOf(given).map(([count, over]) => ({ count: n(count), over: n(over) }));
}

/** Student's factor on a standard uncertainty: what holds 19 times in 20. */
function expanded(work: Work, u: Amount, dof: number, result: Amount): Amount {
  const factor = work.say(`Student’s factor for 95%, ${inWords(dof)} degrees of freedom`, plainOf(t95(dof)));
  return work.say(work.words`${factor} × ${u}`, result);
}

export const uncertainty = {
  GAUGEUNCERTAINTY: (work, ...given) => {
    const read = readings(given);
    const { u } = gaugeOf(read);
    const unit = timesUnit(dimensionOf(given[0]!), length, -1);
    const over = work.sum(pairsOf(given).map(([, along]) => along));
    if (read.length === 1)
      return work.say(
        work.words`half a ${unit.stitch ? 'stitch' : 'row'} either way: ${amount(0.5, given[0]!.unit)} ÷ √3 ÷ ${over}`,
        amount(u, unit),
      );
    return work.say(
      work.words`the larger of what ${read.length} counts scatter by and what one can be read to, over ${over}`,
      amount(u, unit),
    );
  },
  GAUGEFREEDOM: (work, ...given) => {
    const read = readings(given);
    const { dof } = gaugeOf(read);
    const says = dof === Infinity ? 'the reading itself decides' : `${read.length} readings − 1`;
    return work.say(says, plainOf(Math.min(dof, endless)));
  },
  WIDTHGIVEORTAKE: (work, count, gauge, u, dof, tape) => {
    const own = { perCm: n(gauge!), u: n(u!), dof: freedom(dof!) };
    const uTape = tape ? n(tape) : 0;
    const stitches = whole(n(count!));
    const result = widthUncertainty({ count: stitches, gauge: own, uTape });
    const parts = [
      { u: (stitches * own.u) / own.perCm ** 2, dof: own.dof },
      { u: uTape, dof: Infinity },
    ];
    const part = work.say(work.words`${count!} × ${u!} ÷ (${gauge!})²`, lengthOf(parts[0]!.u));
    const all = uTape > 0 ? work.say(work.words`√((${part})² + (${tape!})²)`, lengthOf(result.u)) : part;
    return expanded(work, all, combineUncertainty(parts).dof, lengthOf(result.expanded));
  },
  COUNTGIVEORTAKE: (work, width, uWidth, gauge, u, dof) => {
    const own = { perCm: n(gauge!), u: n(u!), dof: freedom(dof!) };
    const unit = timesUnit(length, dimensionOf(gauge!));
    const result = countUncertainty({ width: n(width!), uWidth: n(uWidth!), gauge: own });
    const parts = [
      { u: n(width!) * own.u, dof: own.dof },
      { u: own.perCm * n(uWidth!), dof: Infinity },
    ];
    const part = work.say(work.words`${width!} × ${u!}`, amount(parts[0]!.u, unit));
    const all =
      n(uWidth!) > 0
        ? work.say(work.words`√((${part})² + (${gauge!} × ${uWidth!})²)`, amount(result.u, unit))
        : part;
    return expanded(work, all, combineUncertainty(parts).dof, amount(result.expanded, unit));
  },
  GIVEORTAKE: (work, ...given) => {
    const read = pairsOf(given);
    const parts = read.map(([u, dof]) => ({ u: n(u), dof: freedom(dof) }));
    const result = combineUncertainty(parts);
    const { unit } = given[0]!;
    const all =
      read.length > 1
        ? work.say(
            work.words`√(${work.joined(
              read.map(([u]) => work.words`(${u})²`),
              ' + ',
            )})`,
            amount(result.u, unit),
          )
        : given[0]!;
    return expanded(work, all, result.dof, amount(result.expanded, unit));
  },
  NEXTCOUNTCHANCE: (work, target, u, dof, multiple, plus, rule) => {
    const repeat = { multiple: whole(n(multiple!)), plus: whole(n(plus!)) };
    const by = rule!.value as Rule;
    const { chance } = neighbourChance({
      target: n(target!),
      u: n(u!),
      dof: freedom(dof!),
      repeats: [repeat],
      rule: by,
    });
    return work.say(
      work.words`the chance that ${target!}, ± ${u!}, goes to another ${ruleInWords(work, by, multipleOf(work, multiple!, plus!))}`,
      plainOf(chance),
    );
  },
} satisfies Record<string, Shows>;
