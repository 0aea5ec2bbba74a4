import { amountAt, amountsIn, listOfAmounts as list } from './amounts';
import type { Along, Begun, WayOfEnds } from './side-statements';

/*
 * What a sentence of a piece says beside its counts: which stitches, where on the row, and what becomes of the ends.
 */

/**
 * The stitches that an instruction names; of two worked together the one they are worked in.
 *
 * @example stitchesNamed('*sc 6, sc2tog; rep from * 3 more times') // ['sc']
 * @example stitchesNamed('k6, m1, k2tog')                          // ['k']
 */
export function stitchesNamed(text: string): string[] {
  const crochet = /(?<![\p{L}\d])(sc|hdc|dc|dtr|htr|tr)(?:\d+tog)?(?!\p{L})/giu;
  const knit = /(?<![\p{L}\d])(?:(k|p)(?:\d+tog)?(?=[\d–]|\s*\(|(?<=tog))|m1(p?))(?!\p{L})/giu;
  const found = [
    ...[...text.matchAll(crochet)].map(([, stitch]) => stitch!.toLowerCase()),
    ...[...text.matchAll(knit)].map(([, stitch, purl]) => (stitch ?? (purl ? 'p' : 'k')).toLowerCase()),
  ];
  return [...new Set(found)];
}

const forms: readonly (readonly [RegExp, string])[] = [
  [/\bat (?:each|both) sides? of (?:the )?marker\b/iu, 'at each side of the marker'],
  [/\bat (?:the )?marker\b/iu, 'at the marker'],
  [/\b(?:at )?(?:each|both) ends?\b/iu, 'at each end'],
  [/\bevenly\b/iu, 'evenly'],
  [/\bat (?:the )?(?:beg(?:inning)?|start)\b/iu, 'at the start'],
  [/\bat (?:the )?end\b/iu, 'at the end'],
];

/**
 * Where on its rows a taper is said to shape, and how many stitches there.
 *
 * @example positionOf('dec 1 st at each end of every 6th row 8 times') // { each: 1, where: 'at each end' }
 * @example positionOf('inc 1 st at the neck edge on row 4')            // { each: 1, where: 'at the neck edge' }
 * @example positionOf('dec 2 sts on every row twice')                  // { each: 2, where: '' }
 */
export function positionOf(text: string): { readonly each: number; readonly where: string } | undefined {
  const many = /^(?:dec|inc)(?:rease)?\s+(\d+)\b/iu.exec(text);
  if (!many) return undefined;
  const each = Number(many[1]);
  const edge = /\bat (?:the )?(\p{L}+) edge\b/iu.exec(text);
  if (edge) return { each, where: `at the ${edge[1]!.toLowerCase()} edge` };
  return { each, where: forms.find(([form]) => form.test(text))?.[1] ?? '' };
}

/**
 * What a sentence says is done with the stitches left or added at each end of a row.
 *
 * @example waysOfEnds('bind off the first 8 sts and leave the last 8 sts on a holder') // { start: 'bound off', end: 'held' }
 */
export function waysOfEnds(text: string): { readonly start?: WayOfEnds; readonly end?: WayOfEnds } {
  const adding = /\bcast on\b/iu.test(text) ? 'cast on' : 'foundation';
  const adds = /\bcast on\b|\badd a foundation of\b/iu.test(text);
  if (adds) {
    const [before, after = ''] = text.split(/\bwork even\b/iu);
    const inEnds = /\bat the (start|beginning|end)\b/iu;
    if (inEnds.test(text)) {
      return {
        ...(/\bat the (?:start|beginning)\b/iu.test(text) ? { start: adding } : {}),
        ...(/\bat the end\b/iu.test(text) ? { end: adding } : {}),
      };
    }
    const has = (part: string | undefined): boolean => /cast on|add a foundation/iu.test(part ?? '');
    return { ...(has(before) ? { start: adding } : {}), ...(has(after) ? { end: adding } : {}) };
  }
  const start = /\b(?:(sl st|ss) across|(?:bind|cast) off)\b/iu.exec(text);
  const end = /\b(?:leave|leaving) the last .*?\b(?:(unworked)|on a holder)/iu.exec(text);
  return {
    ...(start ? { start: start[1] ? 'slipped' : 'bound off' } : {}),
    ...(end ? { end: end[1] ? 'unworked' : 'held' } : {}),
  };
}

/**
 * What becomes of the last stitches.
 *
 * @example endOf('Do not bind off: leave the 40 sts on a holder') // 'on a holder'
 */
export function endOf(text: string): string {
  if (/^fasten off/iu.test(text)) return 'fastened off';
  if (/\bon a holder/iu.test(text)) return 'on a holder';
  if (/\bon the needle/iu.test(text)) return 'on the needle';
  return /\bopen$/iu.test(text) ? 'open' : 'bound off';
}

const takenUp = new RegExp(
  String.raw`^take up\s+(?:the\s+)?.*?(?:\s+of the\s+(${list}) sts?)?\s+left at the end of\s+(.+?)(?:,\s+leaving the others\s+(on a holder|unworked))?\.?$`,
  'iu',
);

const sideTakenUp = new RegExp(
  String.raw`^take up the first ${list} sts? of the (${list}) sts? left at the end of (.+?), leaving the (${list}) sts? in the middle (on a holder|unworked) and the last (${list}) sts? for the other side\.?$`,
  'iu',
);

/** A piece that goes on with the stitches of another, as a line says it. */
export function begunFromPiece(line: string, sizeIndex: number, sizes: number): Begun | undefined {
  const row = /^pick up\s+.*?\s+along the last row of\s+(.+?)\.?$/iu.exec(line);
  if (row) return { kind: 'begun', how: 'last row', from: row[1]! };
  const own = (amounts: string): number | null =>
    amountAt(amountsIn(amounts) ?? [], sizeIndex, sizes) ?? null;
  const side = sideTakenUp.exec(line);
  if (side) {
    const [, whole, from, middle, others, last] = side;
    const of = own(whole!);
    return {
      kind: 'begun',
      how: 'taken up',
      from: from!,
      ...(of === null ? {} : { of }),
      others: others!,
      side: { middle: own(middle!), last: own(last!) },
    };
  }
  const taken = takenUp.exec(line);
  if (!taken) return undefined;
  const [, all, from, others] = taken;
  const of = all === undefined ? null : own(all);
  return {
    kind: 'begun',
    how: 'taken up',
    from: from!,
    ...(of === null ? {} : { of }),
    ...(others === undefined ? {} : { others }),
  };
}

/** A piece that is picked up along an edge, as a line says it. */
export function begunAlong(line: string): Begun {
  return {
    kind: 'begun',
    how: /\bround the armhole\b/iu.test(line) ? 'armhole' : 'edge',
    facing: /\bwith the (right|wrong) side facing\b/iu.exec(line)?.[1]?.toLowerCase() ?? '',
    atUnderarm: /\bat the middle of the underarm\b/iu.test(line),
  };
}

const alongLength = new RegExp(String.raw`, spread evenly along (${list}) (cm|in)\.$`, 'iu');
const alongCount = new RegExp(String.raw` over (${list}) (row end|repeat|st)s?, (?:about )?`, 'iu');

/** What a line says a stretch of an edge is made of, in one size. */
export function alongOf(line: string, sizeIndex: number, sizes: number): Along {
  const own = (text: string): number => amountAt(amountsIn(text) ?? [], sizeIndex, sizes) ?? 0;
  const curve = alongLength.exec(line);
  if (curve) return { by: 'curve', length: own(curve[1]!), unit: curve[2]!.toLowerCase() };
  const counted = alongCount.exec(line);
  if (!counted) return { by: 'stitches' };
  const by = { 'row end': 'rows', repeat: 'motifs', st: 'stitches' } as const;
  return { by: by[counted[2]!.toLowerCase() as keyof typeof by], count: own(counted[1]!) };
}

/**
 * The chains of the holes in a row, each length once.
 *
 * @example holesIn('sc 3, ch 2, skip 2 sts, sc 3') // [2]
 */
export function holesIn(content: string): number[] {
  const found = content.matchAll(/(?<![\p{L}\d])ch (\d+), (?:skip|miss) \d+ sts?(?!\p{L})/giu);
  return [...new Set([...found].map(([, chains]) => Number(chains)))];
}

const intoSpaces = new RegExp(
  String.raw`^On the next (?:row|round), the first of those below, work (${list}) (\S+) in each chain space\.$`,
  'u',
);

/** What a paragraph of a piece says in one size. */
export function paragraphSays(
  text: string,
  sizeIndex: number,
  sizes: number,
):
  | { readonly kind: 'fabric'; readonly text: string; readonly whole: string }
  | { readonly kind: 'round'; readonly how: 'joined' | 'marked' }
  | { readonly kind: 'spaces'; readonly each: number | null; readonly stitch: string }
  | { readonly kind: 'words'; readonly text: string } {
  const fabric = /^(?:Work in|Change to) (.+)\.$/u.exec(text);
  if (fabric) return { kind: 'fabric', text: fabric[1]!, whole: text };
  if (
    /^Join (?:to work in the round, without twisting the stitches|with a (?:sl st|ss) in the first ch, without twisting the chain); place a marker at the start of the round\.$/u.test(
      text,
    )
  ) {
    return { kind: 'round', how: 'joined' };
  }
  if (text === 'Place a marker at the start of the round and move it up as you go.') {
    return { kind: 'round', how: 'marked' };
  }
  const spaces = intoSpaces.exec(text);
  const each = spaces ? amountAt(amountsIn(spaces[1]!) ?? [], sizeIndex, sizes) : undefined;
  if (spaces && each !== undefined) return { kind: 'spaces', each, stitch: spaces[2]! };
  return { kind: 'words', text };
}
