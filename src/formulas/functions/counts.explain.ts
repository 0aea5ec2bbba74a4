import {
  fitMotifs,
  fitTogether,
  foundationChain,
  gaugeOf,
  guessGauge,
  narrowMotifs,
  nearestSize,
  ofSize,
  whole,
  type MotifFit,
  type Rule,
} from '../../craft';
import { length, timesUnit } from '..';
import { writeGauge } from '../../format';
import {
  amount,
  bare,
  dimensionOf,
  numberIn as n,
  plainOf,
  rowsOf,
  stitchesOf,
  textOf,
  type Amount,
} from '../../explain/amount';
import type { Shows, Work } from '../../explain/work';
import { fitted, multipleOf, ruleInWords } from './fitted.explain';
import { pairsOf } from './pairs.explain';

const repeatOf = (multiple: Amount, plus: Amount) => ({ multiple: whole(n(multiple)), plus: whole(n(plus)) });

function chainLonger(turning: Amount, counts: Amount): number {
  return whole(n(turning)) - (counts.value === 'counts' ? 1 : 0);
}

/** The nearest way to set motifs, laid out as a sum; each of the three functions gives one part of it. */
function motifs(work: Work, given: readonly Amount[]): MotifFit {
  const [wanted, motif, least, most, edge, worked, which] = given;
  const flat = worked!.value === 'flat';
  const fit = fitMotifs({
    target: n(wanted!),
    motif: whole(n(motif!)),
    gap: { least: whole(n(least!)), most: whole(n(most!)) },
    edge: whole(n(edge!)),
    worked: worked!.value as 'flat' | 'round',
  })[which ? whole(n(which)) - 1 : 0]!;
  const parts = [work.words`${plainOf(fit.motifs)} × ${motif!}`];
  const gaps = flat ? fit.motifs - 1 : fit.motifs;
  if (gaps > 0) parts.push(work.words`${gaps} × ${stitchesOf(fit.gap)}`);
  if (flat && n(edge!) > 0) parts.push(work.words`2 × ${edge!}`);
  work.say(
    work.words`gaps of ${bare(least!)} to ${most!} tried, nearest to ${wanted!}: ${work.joined(parts, ' + ')}`,
    stitchesOf(fit.count),
  );
  return fit;
}

/** Both halves of a garment and what is fixed, laid out as the sum they come to. */
function fittedTogether(work: Work, given: readonly Amount[]): Amount {
  const [which, wanted, fixed, times1, multiple1, plus1, times2, multiple2, plus2, rule, more] = given;
  const extra = more ? whole(n(more)) : 0;
  const by = (rule?.value ?? 'nearest') as 'nearest' | 'growing';
  const fit = fitTogether({
    target: n(wanted!),
    fixed: n(fixed!),
    halves: [
      { times: whole(n(times1!)), ...repeatOf(multiple1!, plus1!), extra },
      { times: whole(n(times2!)), ...repeatOf(multiple2!, plus2!), extra },
    ],
    rule: by,
  });
  const half = (times: Amount, multiple: Amount, plus: Amount) =>
    work.words`${bare(times)} × a ${multipleOf(work, multiple, plus)}`;
  const added = extra > 0 ? work.words`, each with up to ${bare(more!)} more at its edges` : [];
  const how = by === 'nearest' ? 'nearest to' : 'nearest to, of those that only grow,';
  const total = work.say(
    work.words`${half(times1!, multiple1!, plus1!)} + ${half(times2!, multiple2!, plus2!)}${added} + ${fixed!}, ${how} ${wanted!}: ${bare(times1!)} × ${stitchesOf(fit.counts[0])} + ${bare(times2!)} × ${stitchesOf(fit.counts[1])} + ${fixed!}`,
    stitchesOf(fit.total),
  );
  const at = whole(n(which!)) - 1;
  return work.say(work.words`each piece of half ${bare(which!)}, of ${total}`, stitchesOf(fit.counts[at]!));
}

export const counts = {
  STS: (_work, number) => stitchesOf(n(number!)),
  ROWS: (_work, number) => rowsOf(n(number!)),
  GAUGE: (work, ...given) => {
    const read = pairsOf(given);
    const [count, over] = read[0]!;
    const unit = timesUnit(dimensionOf(count), length, -1);
    const gauge = amount(
      gaugeOf(read.map(([one, along]) => ({ count: n(one), over: n(along) }))).perCm,
      unit,
    );
    if (read.length === 1) return work.say(work.words`${count} ÷ ${over}`, gauge);
    return work.say(
      work.words`(${work.sum(read.map(([one]) => one))}) ÷ (${work.sum(read.map(([, along]) => along))})`,
      gauge,
    );
  },
  GUESSGAUGE: (work, gauge, hook, other) =>
    work.say(
      work.words`${gauge!} × ${work.hook(hook!)} ÷ ${work.hook(other!)}, a guess until it is swatched`,
      amount(guessGauge({ perCm: n(gauge!), hook: n(hook!), other: n(other!) }).perCm, gauge!.unit),
    ),
  FABRIC: (work, sts, rowsPerCm, ...heights) => {
    const { gaugeOver, decimal } = work.settings;
    const per = (gauge: Amount): string => writeGauge(n(gauge), gaugeOver, { decimal });
    const fabric = {
      stitches: n(sts!),
      rows: n(rowsPerCm!),
      ...(heights.length > 0 ? { heights: heights.map(n) } : {}),
    };
    return work.say('the fabric of the swatch', amount(JSON.stringify(fabric), 'fabric'), {
      answer: `${per(sts!)} sts and ${per(rowsPerCm!)} rows to ${gaugeOver}`,
    });
  },
  FITREPEAT: (work, wanted, multiple, plus, rule) => {
    const repeat = repeatOf(multiple!, plus!);
    const by = (rule?.value ?? 'nearest') as Rule;
    return fitted(work, wanted!, {
      repeats: [repeat],
      rule: by,
      says: ruleInWords(work, by, multipleOf(work, multiple!, plus!)),
    });
  },
  FITREPEATS: (work, wanted, rule, parity, ...given) => {
    const repeats = pairsOf(given).map(([multiple, plus]) => repeatOf(multiple, plus));
    const odd = parity!.value === 'any' ? undefined : (parity!.value as 'odd' | 'even');
    const by = rule!.value as Rule;
    const multiples = pairsOf(given).map(([multiple, plus]) => multipleOf(work, multiple, plus));
    const says = work.words`${odd ? `${odd} ` : ''}count that is a ${work.joined(multiples, ' and a ')}`;
    return fitted(work, wanted!, { repeats, rule: by, parity: odd, says: ruleInWords(work, by, says) });
  },
  FITTOGETHER: (work, ...given) => fittedTogether(work, given),
  FITCHAIN: (work, wanted, multiple, plus, rule, turning, counts) => {
    const repeat = repeatOf(multiple!, plus!);
    const longer = chainLonger(turning!, counts!);
    const by = rule!.value as Rule;
    return fitted(work, wanted!, {
      repeats: [{ ...repeat, plus: repeat.plus - longer }],
      rule: by,
      says: ruleInWords(
        work,
        by,
        work.words`count whose chain, ${longer} longer, is a ${multipleOf(work, multiple!, plus!)}`,
      ),
    });
  },
  FOUNDATIONCHAIN: (work, sts, turning, counts) => {
    const counted = counts!.value === 'counts';
    const chain = foundationChain({ stitches: whole(n(sts!)), turning: whole(n(turning!)), counts: counted });
    return work.say(
      work.words`${sts!} + ${bare(turning!)} to turn${counted ? ' − 1, since the turning chain counts as a stitch' : ''}`,
      stitchesOf(chain),
    );
  },
  ROUNDCOUNT: (work, wanted, given) => {
    const target = (given?.value ?? 'nearest') as 'nearest' | 'up' | 'down' | 'even' | 'odd';
    const parity = target === 'even' || target === 'odd' ? target : undefined;
    const rule = parity ? 'nearest' : (target as Rule);
    return fitted(work, wanted!, {
      repeats: [],
      rule,
      parity,
      says: ruleInWords(work, rule, `${parity ?? 'whole'} number`),
    });
  },
  FITMOTIFS: (work, ...given) => stitchesOf(motifs(work, given).count),
  MOTIFS: (work, ...given) => {
    const fit = motifs(work, given);
    return work.say('motifs in it', plainOf(fit.motifs));
  },
  MOTIFGAP: (work, ...given) => {
    const fit = motifs(work, given);
    return work.say('the gap between two motifs', stitchesOf(fit.gap));
  },
  NARROWMOTIFS: (work, count, motif, gap, least, edge, worked) => {
    const flat = worked!.value === 'flat';
    const narrowed = narrowMotifs({
      motifs: whole(n(count!)),
      motif: whole(n(motif!)),
      gap: whole(n(gap!)),
      least: whole(n(least!)),
      edge: whole(n(edge!)),
      worked: worked!.value as 'flat' | 'round',
    });
    const gaps = flat ? n(count!) - 1 : n(count!);
    const before = n(count!) * n(motif!) + gaps * n(gap!) + (flat ? 2 * n(edge!) : 0);
    const sum = [
      work.words`${bare(count!)} × ${bare(motif!)}`,
      work.words`${gaps} × ${bare(gap!)}`,
      ...(flat ? [work.words`2 × ${bare(edge!)}`] : []),
    ];
    const all = work.say(work.joined(sum, ' + '), stitchesOf(before));
    return work.say(
      work.words`${all} − ${narrowed.taken}, one stitch out of each gap`,
      stitchesOf(narrowed.count),
    );
  },
  STATED: (work, which, ...list) => {
    const value = ofSize(list.map(n), whole(n(which!)));
    return work.say(
      work.words`number ${bare(which!)} of the ${list.length} that are printed`,
      plainOf(value),
    );
  },
  NEARESTSIZE: (work, wanted, ...list) => {
    const size = nearestSize(n(wanted!), list.map(n));
    return work.say(
      work.words`${list[size - 1]!} is nearest to ${wanted!}: which of the ${list.length} it is`,
      plainOf(size),
    );
  },
  SIZENAMED: (work, which, ...names) =>
    work.say(
      work.words`name ${bare(which!)} of the ${names.length} sizes`,
      textOf(String(names[whole(n(which!)) - 1]!.value)),
    ),
} satisfies Record<string, Shows>;
