import { joinWithAnd } from '../../../format';
import { allCells, type NotionsCell, type YarnCell } from '../../../notebook';
import { type Gathered, swatchNamed } from '../gathered';
import type { PatternPart, Sentence } from '../../pattern-document';
import { sentencesOf } from '../reword';
import { shown, theirs, type Sentences } from '../sentence';
import { sizeList, type BySize } from '../size-list';
import type { PatternSource } from '../../source';
import { lengthIn, numbersIn, yarnLengthIn } from '../written';
import { namesOtherTool, workedWith } from '../worked-with';
import { swatchesUsed } from './gauge';

/**
 * Yarn, hooks or needles, and notions.
 *
 * @param instructions the parts that are followed: what they ask for is listed too
 */
export function materialsPart(
  source: PatternSource,
  found: Gathered,
  sentences: Sentences,
  instructions: readonly PatternPart[],
): PatternPart {
  const cells = allCells(source.notebook);
  const items = [
    ...cells.flatMap((cell) => (cell.kind === 'yarn' ? yarnLines(source, found, sentences, cell) : [])),
    ...toolLines(source, found, sentences),
    ...smallToolLines(source, sentences, instructions),
    ...cells.flatMap((cell) => (cell.kind === 'notions' ? notionLines(source, found, sentences, cell) : [])),
  ];
  return {
    key: 'materials',
    kind: 'materials',
    heading: 'Materials',
    blocks: [{ kind: 'list', key: 'materials list', items }],
  };
}

function yarnLines(source: PatternSource, found: Gathered, sentences: Sentences, cell: YarnCell): Sentence[] {
  const { settings } = source.notebook;
  const of = (key: string): BySize<number> =>
    found.sizes.map(({ id }) => source.number(id, cell.id, key) ?? null);
  const grams = of('grams');
  if (grams.every((amount) => amount === null)) return [];
  const balls = of('balls');
  const lengths = of('length');
  const fabrics = [...new Set(cell.uses.map(({ fabric }) => swatchNamed(source, fabric)?.label ?? fabric))];
  const first = sentences.paragraph(`yarn ${cell.id}`, '{yarn}: about {grams} g{length}, for {fabrics}.', {
    yarn: theirs(cell.label),
    grams: numbersIn(settings, grams),
    length: lengths.some((length) => length !== null) ? `, ${yarnLengthIn(settings, lengths)}` : '',
    fabrics: theirs(joinWithAnd(fabrics.map(shown))),
  });
  const reserve = shareOf(of('reserve'));
  const ballGrams = of('ballGrams');
  if (balls.every((count) => count === null)) return [first];
  return [
    first,
    sentences.paragraph(
      `yarn ${cell.id} balls`,
      'That is {balls} of {weight} g, with {reserve} % in reserve; an estimate from weighed swatches.',
      {
        balls: ballsOf(balls),
        weight: numbersIn(settings, ballGrams, 1),
        reserve: numbersIn(settings, reserve, 1),
      },
    ),
  ];
}

const shareOf = (values: BySize<number>): BySize<number> =>
  values.map((value) => (value === null ? null : value * 100));

function ballsOf(balls: BySize<number>): string {
  const list = sizeList(balls);
  return list === '1' ? '1 ball' : `${list} balls`;
}

/** A line for each hook or pair of needles, with the fabrics that are worked on it. */
function toolLines(source: PatternSource, found: Gathered, sentences: Sentences): Sentence[] {
  const { craft } = source.notebook.settings;
  const tools = new Map<string, string[]>();
  const needles: string[] = [];
  for (const swatch of swatchesUsed(source, found)) {
    if (namesOtherTool(swatch, craft)) {
      needles.push(swatch.label);
      continue;
    }
    const tool = workedWith(swatch, craft);
    if (tool !== '') tools.set(tool, [...(tools.get(tool) ?? []), swatch.label]);
  }
  const lines = [...tools].map(([tool, fabrics], at) =>
    sentences.paragraph(`tool ${at + 1}`, '{tool}, for {fabrics}, or the size that gives the gauge.', {
      tool: theirs(tool),
      fabrics: theirs(joinWithAnd(fabrics.map(shown))),
    }),
  );
  if (needles.length === 0) return lines;
  return [
    ...lines,
    sentences.paragraph('tool needles', 'Needles in the size that gives the gauge, for {fabrics}.', {
      fabrics: theirs(joinWithAnd(needles.map(shown))),
    }),
  ];
}

/**
 * What the instructions have in hand beside hook or needles: common practice lists it. Read off the text, so that what a
 * person put in their own words counts; what stands among the notions already is not listed again.
 */
function smallToolLines(
  source: PatternSource,
  sentences: Sentences,
  instructions: readonly PatternPart[],
): Sentence[] {
  const message = sentencesOf({ parts: instructions })
    .map(({ text }) => text)
    .join('\n');
  const notions = allCells(source.notebook).flatMap((cell) => (cell.kind === 'notions' ? [cell.label] : []));
  const lists = (word: RegExp): boolean => notions.some((label) => word.test(label));
  const [marker, holder, needle] = [
    /\bmarkers?\b/iu,
    /\bholders?\b/iu,
    /\b(?:tapestry|yarn|darning|wool) needle/iu,
  ];
  const lines: Sentence[] = [];
  const list = (key: string, template: string): void => {
    lines.push(sentences.paragraph(`tool ${key}`, template));
  };
  if (marker.test(message) && !lists(marker)) {
    list('marker', /\bmarkers\b/iu.test(message) ? 'Stitch markers.' : 'Stitch marker.');
  }
  if (holder.test(message) && !lists(holder))
    list('holder', 'Stitch holders or spare yarn, to hold stitches on.');
  const seams = /\b(?:sew|seam|join row|join stitch)/iu.test(message);
  const ends = /\bweave in\b/iu.test(message);
  if ((seams || ends) && !lists(needle)) {
    list(
      'needle',
      seams && ends
        ? 'Tapestry needle, to sew the seams and weave in the ends.'
        : seams
          ? 'Tapestry needle, to sew the seams.'
          : 'Tapestry needle, to weave in the ends.',
    );
  }
  return lines;
}

function notionLines(
  source: PatternSource,
  found: Gathered,
  sentences: Sentences,
  cell: NotionsCell,
): Sentence[] {
  const { settings } = source.notebook;
  const of = (key: string): BySize<number> =>
    found.sizes.map(({ id }) => source.number(id, cell.id, key) ?? null);
  const pieces = of('pieces');
  if (pieces.every((count) => count === null)) return [];
  const each = of('each');
  const lengths = of('length');
  const some = (values: BySize<number>): boolean => values.some((value) => value !== null && value > 0);
  if (!some(each)) {
    return [
      sentences.paragraph(`notions ${cell.id}`, '{notions}: {pieces}.', {
        notions: theirs(cell.label),
        pieces: sizeList(pieces),
      }),
    ];
  }
  return [
    sentences.paragraph(`notions ${cell.id}`, '{notions}: {pieces} of {each} each, {length} in all.', {
      notions: theirs(cell.label),
      pieces: sizeList(pieces),
      each: lengthIn(settings, each),
      length: yarnLengthIn(settings, lengths, 1),
    }),
  ];
}
