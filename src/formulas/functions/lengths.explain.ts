import {
  armholeDepthFor,
  dropSleeveLength,
  finished,
  fitName,
  frontWidth,
  hangingGrowth,
  lengthToWork,
  measureWhileWorking,
  neckWidth,
  passes,
  seamedWidth,
  seamAllowance,
  strainOf,
  stretchOf,
  whole,
  cmPerInch,
} from '../../craft';
import { strain } from '..';
import {
  amount,
  lengthOf,
  metresOf,
  numberIn as n,
  percentOf,
  plainOf,
  stitchesOf,
  textOf,
  truthOf,
  type Amount,
} from '../../explain/amount';
import type { Shows, Work } from '../../explain/work';

/** A length told in another unit: the number says itself. */
const inWords =
  (cm: number): Shows =>
  (_work, number) =>
    lengthOf(n(number!) * cm);

function afterSeams(work: Work, seams: Amount, taken: Amount): Amount {
  return work.say(work.words`2 × ${seams} × ${taken}`, stitchesOf(2 * n(seams) * n(taken)));
}

function stretched(work: Work, count: Amount, gauge: Amount, times: Amount): Amount {
  const relaxed = work.times(count, '÷', gauge);
  const opening = passes({
    count: whole(n(count)),
    stitchesPerCm: n(gauge),
    stretch: n(times),
    body: 1,
  }).opening;
  return work.say(work.words`${relaxed} × ${times}, stretched`, lengthOf(opening));
}

/** g/cm² and the strain have no units that people carry in their heads, so the growth is told as one product. */
function growth(work: Work, length: Amount, pull: Amount, mass: Amount): Amount {
  return work.say(
    work.words`${pull} × ${mass} × (${length})² ÷ 2`,
    lengthOf(hangingGrowth({ length: n(length), strain: n(pull), mass: n(mass) })),
  );
}

export const lengths = {
  CM: inWords(1),
  MM: inWords(0.1),
  METRES: (_work, number) => metresOf(n(number!) * 100),
  IN: inWords(cmPerInch),
  YARDS: (_work, number) => metresOf(n(number!) * 36 * cmPerInch),
  FINISHED: (work, body, ease) =>
    work.say(work.words`${body!}${work.plus(ease!)}`, lengthOf(finished(n(body!), { length: n(ease!) }))),
  FINISHEDBY: (work, body, share) =>
    work.say(
      work.words`${body!} × (100%${work.plus({ ...share!, ...percentOf(n(share!)) })})`,
      lengthOf(finished(n(body!), { percent: n(share!) * 100 })),
    ),
  FITNAME: (work, bust, ease) => {
    const { name, between } = fitName(n(bust!), { length: n(ease!) });
    return work.say(
      work.words`${ease!} of ease at a bust of ${bust!}`,
      textOf(between ? `nearest to ${name}` : name),
    );
  },
  DROPSLEEVE: (work, neckToWrist, bodyWidth) =>
    work.say(
      work.words`${neckToWrist!} − ${bodyWidth!} ÷ 2`,
      lengthOf(dropSleeveLength({ neckToWrist: n(neckToWrist!), bodyWidth: n(bodyWidth!) })),
    ),
  ARMHOLEDEPTH: (work, chartDepth, upperArm, ease) => {
    const half = work.say(
      work.words`half the arm and its ease, (${upperArm!}${work.plus(ease!)}) ÷ 2`,
      lengthOf((n(upperArm!) + n(ease!)) / 2),
    );
    const depth = armholeDepthFor({ chartDepth: n(chartDepth!), upperArm: n(upperArm!), ease: n(ease!) });
    return work.say(work.words`the larger of ${chartDepth!} in the chart and ${half}`, lengthOf(depth), {
      hint: n(chartDepth!) >= n(half) ? 'the chart’s' : 'half the arm and its ease',
    });
  },
  FRONTWIDTH: (work, bust, back, band, closes) =>
    work.say(
      work.words`(${bust!} − ${back!} − ${closes!.value === 'overlapping' ? '' : '2 × '}${band!}) ÷ 2`,
      lengthOf(
        frontWidth({
          bust: n(bust!),
          back: n(back!),
          band: n(band!),
          closes: closes!.value as 'edge to edge' | 'overlapping',
        }),
      ),
    ),
  NECKWIDTH: (work, neck, band) =>
    work.say(work.words`${neck!} − 2 × ${band!}`, lengthOf(neckWidth({ neck: n(neck!), band: n(band!) }))),
  SEAMEDWIDTH: (work, stitches, seams, taken, gauge) => {
    const lost = afterSeams(work, seams!, taken!);
    const left = work.say(work.words`${stitches!} − ${lost}`, stitchesOf(n(stitches!) - n(lost)));
    work.times(left, '÷', gauge!);
    return lengthOf(
      seamedWidth({
        stitches: [whole(n(stitches!))],
        seams: whole(n(seams!)),
        taken: whole(n(taken!)),
        stitchesPerCm: n(gauge!),
      }),
    );
  },
  SEAMSTAKE: (work, seams, taken, gauge) => {
    work.times(afterSeams(work, seams!, taken!), '÷', gauge!);
    return lengthOf(
      seamAllowance({ seams: whole(n(seams!)), taken: whole(n(taken!)), stitchesPerCm: n(gauge!) }),
    );
  },
  STRAIN: (work, length, pulled, width, grams) => {
    const grown = work.say(
      work.words`(${pulled!} − ${length!}) ÷ ${length!}`,
      plainOf((n(pulled!) - n(length!)) / n(length!)),
    );
    return work.say(
      work.words`${grown} ÷ ${grams!} × ${width!}`,
      amount(
        strainOf({ length: n(length!), stretched: n(pulled!), width: n(width!), grams: n(grams!) }),
        strain,
      ),
    );
  },
  HANGINGGROWTH: (work, length, pull, mass) => growth(work, length!, pull!, mass!),
  LENGTHTOWORK: (work, length, pull, mass) => {
    // The length worked is in the growth too, so that it is the root of a quadratic: W + c·m·W² ÷ 2 = L.
    const root = work.say(
      work.words`√(1 + 2 × ${pull!} × ${mass!} × ${length!})`,
      plainOf(Math.sqrt(1 + 2 * n(pull!) * n(mass!) * n(length!))),
    );
    return work.say(
      work.words`2 × ${length!} ÷ (1 + ${root})`,
      lengthOf(lengthToWork({ length: n(length!), strain: n(pull!), mass: n(mass!) })),
    );
  },
  MEASUREWHILEWORKING: (work, length, asWorked, blocked) => {
    work.times(work.times(length!, '×', blocked!), '÷', asWorked!);
    return lengthOf(
      measureWhileWorking({ length: n(length!), asWorked: n(asWorked!), blocked: n(blocked!) }),
    );
  },
  STRETCH: (work, relaxed, pulled) => {
    work.times(pulled!, '÷', relaxed!);
    return plainOf(stretchOf({ relaxed: n(relaxed!), stretched: n(pulled!) }));
  },
  OPENING: (work, count, gauge, times) => stretched(work, count!, gauge!, times!),
  PASSES: (work, count, gauge, times, body) => {
    const opening = stretched(work, count!, gauge!, times!);
    const { holds } = passes({
      count: whole(n(count!)),
      stitchesPerCm: n(gauge!),
      stretch: n(times!),
      body: n(body!),
    });
    return work.say(work.words`${opening} ≥ ${body!}`, truthOf(holds));
  },
  LEASTTOPASS: (work, gauge, times, body) => {
    const exact = work.times(body!, '×', gauge!);
    const relaxed = work.say(work.words`${exact} ÷ ${times!}`, stitchesOf(n(exact) / n(times!)));
    const { least } = passes({ count: 1, stitchesPerCm: n(gauge!), stretch: n(times!), body: n(body!) });
    return work.say('up to a whole stitch', stitchesOf(least), { from: work.part(relaxed) });
  },
} satisfies Record<string, Shows>;
