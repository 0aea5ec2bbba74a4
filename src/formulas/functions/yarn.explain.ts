import { notionsFor, poolYarn, timeFor, whole, yarnFor, yarnWeightsFor } from '../../craft';
import {
  bare,
  gramsOf,
  metresOf,
  numberIn as n,
  lengthOf,
  percentOf,
  plainOf,
  textOf,
  type Amount,
} from '../../explain/amount';
import type { Shows, Work } from '../../explain/work';

const cmPerMetre = 100;

function pooled(grams: number, ball: { grams: number; metres: number }) {
  return poolYarn([{ yarn: '', grams, ball }])[0]!;
}

function sites(work: Work, given: readonly Amount[]): Amount {
  const [all, every, first] = given.map((one) => whole(n(one)));
  const { pieces } = notionsFor({ sites: all!, everyNth: every!, startAt: first!, lengthEach: 1 });
  const [a, e, f] = given.map(bare);
  return work.say(work.words`(${a!} − ${f!}) ÷ ${e!}, whole, + 1`, plainOf(pieces));
}

export const yarn = {
  GRAMS: (_work, number) => gramsOf(n(number!)),
  YARNGRAMS: (work, area, swatchArea, swatchGrams, given) => {
    const reserve = given ?? percentOf(0.1);
    const unreserved = work.say(
      work.words`${area!} × ${swatchGrams!} / ${swatchArea!}`,
      gramsOf((n(area!) * n(swatchGrams!)) / n(swatchArea!)),
    );
    const { grams } = yarnFor({
      area: n(area!),
      swatch: { area: n(swatchArea!), grams: n(swatchGrams!) },
      reserve: n(reserve),
    });
    return work.say(
      work.words`${unreserved}${work.plus({ ...reserve, ...percentOf(n(reserve)) })} in reserve`,
      gramsOf(grams),
    );
  },
  BALLS: (work, grams, ball) => {
    const exact = work.times(grams!, '÷', ball!);
    const { balls } = pooled(n(grams!), { grams: n(ball!), metres: 1 });
    return work.say('up to whole balls', plainOf(balls), { from: work.part(exact) });
  },
  YARNMETRES: (work, grams, ball, length) => {
    const { metres } = pooled(n(grams!), { grams: n(ball!), metres: n(length!) / cmPerMetre });
    return work.say(
      work.words`${grams!} × ${{ ...length!, ...metresOf(n(length!)) }} / ${ball!}`,
      metresOf(whole(metres * cmPerMetre)),
    );
  },
  YARNWEIGHT: (work, gauge, fabric) => {
    const key = fabric!.value === 'stockinette' ? 'stockinette' : 'singleCrochet';
    const found = yarnWeightsFor({ stitchesPerCm: n(gauge!), fabric: key });
    const text = found.map(({ number, name }) => `${number} ${name}`).join(' or ') || 'none';
    return work.say(
      work.words`${gauge!} in ${String(fabric!.value)}, among the published ranges`,
      textOf(text),
    );
  },
  NOTIONS: (work, ...given) => sites(work, given),
  NOTIONLENGTH: (work, all, every, first, each, waste) => {
    const pieces = sites(work, [all!, every!, first!]);
    const { metres } = notionsFor({
      sites: whole(n(all!)),
      everyNth: whole(n(every!)),
      startAt: whole(n(first!)),
      lengthEach: n(each!),
      waste: waste ? n(waste) : 0,
    });
    const wasteless = work.say(work.words`${pieces} × ${each!}`, lengthOf(n(pieces) * n(each!)));
    const result = metresOf(whole(metres * cmPerMetre));
    if (!waste || n(waste) === 0) return result;
    return work.say(
      work.words`${wasteless}${work.plus({ ...waste, ...percentOf(n(waste)) })} for waste`,
      result,
    );
  },
  WORKHOURS: (work, stitches, perMinute) => {
    const minutes = work.say(
      work.words`${stitches!} ÷ ${perMinute!} a minute`,
      plainOf(n(stitches!) / n(perMinute!)),
      { answer: `${work.write(plainOf(n(stitches!) / n(perMinute!)))} minutes` },
    );
    const { hours } = timeFor({ stitches: whole(n(stitches!)), perMinute: n(perMinute!) });
    return work.say(work.words`${minutes} ÷ 60`, plainOf(hours));
  },
} satisfies Record<string, Shows>;
