import {
  armholeFit,
  buttonholes,
  checkJoins,
  joinArmhole,
  pickUp,
  pickUpAgainstConvention,
  pickUpEdge,
  pickUpRatio,
  sidewaysRib,
  whole,
  type EdgeFabric,
  type EdgeStretch,
  type Rule,
} from '../../craft';
import { inGroups, inSteps, timed } from '..';
import {
  amount,
  bare,
  knownBy,
  numberIn as n,
  plainOf,
  rowsOf,
  stitchesOf,
  textOf,
  truthOf,
  worthOf,
  type Amount,
} from '../../explain/amount';
import type { Shows, Work } from '../../explain/work';
import type { TextRun } from '../../explain/step';
import { withRemainder } from './division.explain';
import { fitted, multipleOf, ruleInWords } from './fitted.explain';

/** A ratio as it is told: it is the answer of a step before. */
const fraction = (pick: number, of: number): TextRun[] => [
  { text: `${pick}/${of}`, ...knownBy(plainOf(pick / of)) },
];

/** Stitches to a row end, as a decimal and as the fraction that can be followed. */
function ratio(work: Work, rowGauge: Amount, stitchGauge: Amount) {
  const exact = work.times(stitchGauge, '÷', rowGauge, 'sts to a row end');
  const found = pickUpRatio({ rowsPerCm: n(rowGauge), stitchesPerCm: n(stitchGauge) });
  work.say('nearest fraction over 8 rows or fewer', plainOf(found.pick / found.of), {
    from: { ...work.part(exact), text: `${work.write(plainOf(n(exact)))} sts to a row end` },
    answer: `${found.pick}/${found.of}`,
  });
  return found;
}

const edgeOf = ({ value }: Amount): EdgeStretch => JSON.parse(value as string) as EdgeStretch;

/** A stretch of an edge: the exact stitches it takes are said, its plan goes on. */
function edge(work: Work, says: readonly TextRun[], plan: EdgeStretch): Amount {
  const exact = stitchesOf(pickUpEdge([plan]).unfitted);
  return work.say(says, amount(JSON.stringify(plan), 'edge'), {
    answer: work.write(exact),
    worth: worthOf(exact),
  });
}

function unfitted(work: Work, given: readonly Amount[]): Amount {
  const stretches = given.map(edgeOf);
  const all = stitchesOf(pickUpEdge(stretches).unfitted);
  if (stretches.length === 1) return all;
  return work.say(work.sum(stretches.map((stretch) => stitchesOf(pickUpEdge([stretch]).unfitted))), all);
}

function fittedEdge(work: Work, given: readonly Amount[]) {
  const [multiple, plus, rule, ...stretches] = given;
  const repeats = [{ multiple: whole(n(multiple!)), plus: whole(n(plus!)) }];
  const by = rule!.value as Rule;
  fitted(work, unfitted(work, stretches), {
    repeats,
    rule: by,
    says: ruleInWords(work, by, multipleOf(work, multiple!, plus!)),
  });
  return pickUpEdge(stretches.map(edgeOf), { repeats, rule: by });
}

export const edges = {
  PICKUPSTITCHES: (work, rowGauge, stitchGauge) => {
    const { pick } = ratio(work, rowGauge!, stitchGauge!);
    return work.say('picked up', stitchesOf(pick));
  },
  PICKUPROWS: (work, rowGauge, stitchGauge) => {
    const { of } = ratio(work, rowGauge!, stitchGauge!);
    return work.say('along every', rowsOf(of));
  },
  PICKUPOFF: (work, rowGauge, stitchGauge) => {
    const { pick, of, off } = ratio(work, rowGauge!, stitchGauge!);
    return work.say(
      work.words`${fraction(pick, of)} ÷ ${plainOf(n(stitchGauge!) / n(rowGauge!))} − 1`,
      plainOf(off),
    );
  },
  PICKUPCONVENTION: (work, fabric, rowGauge, stitchGauge) => {
    const { convention, difference } = pickUpAgainstConvention({
      fabric: fabric!.value as EdgeFabric,
      rowsPerCm: n(rowGauge!),
      stitchesPerCm: n(stitchGauge!),
    });
    const exact = plainOf(n(work.times(stitchGauge!, '÷', rowGauge!, 'sts to a row end')));
    return work.say(
      work.words`in ${String(fabric!.value)}, commonly ${convention.pick}/${convention.of}: ${convention.pick}/${convention.of} ÷ ${exact} − 1`,
      plainOf(difference),
    );
  },
  PICKUP: (work, rowEnds, stitches) => {
    const [rows, count] = [whole(n(rowEnds!)), whole(n(stitches!))];
    const { groups } = pickUp({ rows, stitches: count });
    const skipped = rows - count;
    if (skipped > 0 && skipped <= count) {
      const left = work.say(work.words`${rowEnds!} − ${bare(stitches!)}`, plainOf(skipped), {
        answer: `${skipped} skipped`,
      });
      withRemainder(work, rowEnds!, work.words`${left}, one skipped in each part`, rows, skipped);
    } else if (skipped <= 0)
      withRemainder(work, stitches!, work.words`${bare(rowEnds!)} row ends`, count, rows);
    else
      withRemainder(work, rowEnds!, work.words`${bare(stitches!)}, one picked up in each part`, rows, count);
    const text = inGroups(
      groups.map(({ pick, skip, times = 1 }) => {
        const group = skip === 0 ? `${pick} in 1` : `${pick} of ${pick + skip}`;
        return times === 1 ? group : timed(group, times);
      }),
    );
    return work.say('so pick up', textOf(text));
  },
  EDGEROWS: (work, rows, pick, of) =>
    edge(work, work.words`${rows!} × ${pick!} / ${of!}`, {
      kind: 'rows',
      rows: whole(n(rows!)),
      pick: whole(n(pick!)),
      of: whole(n(of!)),
    }),
  EDGESTITCHES: (work, stitches) =>
    edge(work, work.words`${stitches!}, one for one`, { kind: 'stitches', count: whole(n(stitches!)) }),
  EDGEMOTIFS: (work, motifs, each) =>
    edge(work, work.words`${motifs!} × ${each!}`, {
      kind: 'motifs',
      motifs: whole(n(motifs!)),
      each: whole(n(each!)),
    }),
  EDGECURVE: (work, length, gauge) =>
    edge(work, work.words`${length!} × ${gauge!}`, {
      kind: 'curve',
      length: n(length!),
      stitchesPerCm: n(gauge!),
    }),
  PICKUPEDGE: (work, ...given) => stitchesOf(fittedEdge(work, given).total),
  PICKUPUNFITTED: (work, ...given) => unfitted(work, given),
  PICKUPSHARE: (work, which, ...given) => {
    const { perStretch, total, unfitted: exact } = fittedEdge(work, given);
    const at = whole(n(which!)) - 1;
    const own = pickUpEdge([edgeOf(given[3 + at]!)]).unfitted;
    return work.say(
      work.words`its share: ${stitchesOf(own)} × ${stitchesOf(total)} ÷ ${stitchesOf(exact)}, to a whole stitch`,
      stitchesOf(perStretch[at]!),
    );
  },
  SIDEWAYSRIB: (work, length, gauge, rule) => {
    const by = (rule?.value ?? 'nearest') as Rule;
    const exact = work.times(length!, '×', gauge!);
    const { rows } = sidewaysRib({ length: n(length!), rowsPerCm: n(gauge!), rule: by });
    return work.say(ruleInWords(work, by, 'even number'), rowsOf(rows), { from: work.part(exact) });
  },
  BUTTONHOLES: (work, length, ends, count, width) => {
    const plan = {
      length: whole(n(length!)),
      ends: whole(n(ends!)),
      count: whole(n(count!)),
      width: whole(n(width!)),
    };
    const { starts } = buttonholes(plan);
    const plain = plan.length - 2 * plan.ends - plan.count * plan.width;
    const left = work.say(
      work.words`${bare(length!)} − 2 × ${bare(ends!)} − ${bare(count!)} × ${bare(width!)}`,
      amount(plain, length!.unit),
    );
    if (plan.count > 1)
      withRemainder(work, bare(left), [{ text: `${plan.count - 1} gaps` }], plain, plan.count - 1);
    return work.say('each begins at', textOf(inSteps(starts.map(String))));
  },
  JOINARMHOLE: (work, sideRows, pick, of, underarm, seam) => {
    const plan = {
      sideRows: whole(n(sideRows!)),
      pick: whole(n(pick!)),
      of: whole(n(of!)),
      underarm: whole(n(underarm!)),
      seam: whole(n(seam!)),
    };
    const total = joinArmhole(plan);
    const exact = stitchesOf((plan.sideRows * plan.pick) / plan.of);
    work.say(work.words`one side: ${sideRows!} × ${pick!} / ${of!}`, exact);
    const side = stitchesOf((total - plan.underarm - plan.seam) / 2);
    if (n(side) !== n(exact)) work.say('nearest whole number', side, { from: work.part(exact) });
    const rest = [
      ...(plan.underarm > 0 ? [work.words`${underarm!} at the underarm`] : []),
      ...(plan.seam > 0 ? [work.words`${seam!} for the seam`] : []),
    ];
    return work.say(work.joined([work.words`2 × ${side}`, ...rest], ' + '), stitchesOf(total));
  },
  ARMHOLEFIT: (work, count, gauge, armhole) => {
    const width = work.times(count!, '÷', gauge!);
    const { off } = armholeFit({ count: whole(n(count!)), stitchesPerCm: n(gauge!), armhole: n(armhole!) });
    return work.say(work.words`${width} ÷ ${armhole!} − 1`, plainOf(off));
  },
  JOINS: (work, ...given) => {
    const sides = given.map((count, at) => ({ name: `side ${at + 1}`, count: whole(n(count)) }));
    const holds = checkJoins([{ name: 'the join', by: 'stitch', sides }]).every((one) => one.holds);
    return work.say(work.joined(given, ' = '), truthOf(holds));
  },
} satisfies Record<string, Shows>;
