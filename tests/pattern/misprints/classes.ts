import type { PatternBlock, PatternDocument } from '../../../src/pattern';
import { refsOf, withBlock, withPart, type Span } from './text';

/** One kind of slip that a typist makes: all the ways in which it can befall a document. */
export interface MisprintClass {
  readonly name: string;
  of(document: PatternDocument): Misprint[];
}
export interface Misprint {
  /** What was misprinted, to be read where it was not found. */
  readonly about: string;
  readonly document: PatternDocument;
}

type Slip = (text: string, span: Span, document: PatternDocument) => readonly string[];

/** A class of slips in single texts. */
function inTexts(name: string, where: (span: Span) => boolean, slip: Slip): MisprintClass {
  return {
    name,
    of: (document) =>
      refsOf(document)
        .filter(where)
        .flatMap((span) =>
          slip(span.text, span, document)
            .filter((text) => text !== span.text)
            .map((text) => ({ about: `${span.text} → ${text}`, document: span.put(text) })),
        ),
  };
}

const inPieces = ({ part, kind }: Span): boolean => part.kind === 'piece' && kind === 'line';
const inPart =
  (...kinds: string[]) =>
  (span: Span): boolean =>
    kinds.includes(span.part.kind) && (span.kind === 'paragraph' || span.kind === 'line');
const either =
  (...tests: ((span: Span) => boolean)[]) =>
  (span: Span): boolean =>
    tests.some((test) => test(span));

/** Every match of a form, one at a time, put in another way. */
function each(form: RegExp, by: (found: RegExpMatchArray) => string | readonly string[]): Slip {
  return (text) =>
    [...text.matchAll(form)].flatMap((found) =>
      [by(found)]
        .flat()
        .map((put) => text.slice(0, found.index) + put + text.slice(found.index! + found[0].length)),
    );
}

const number = /(?<![\d.,])\d+(?![\d.,]*\d)/gu;
const anyNumber = /\d+(?:[.,]\d+)?/gu;
const more = ([text]: RegExpMatchArray): string => String(Number(text) + 1);
const less = ([text]: RegExpMatchArray): string => String(Math.max(0, Number(text) - 1));
const otherDigit = ([text]: RegExpMatchArray): string[] =>
  [...text].flatMap((digit, at) =>
    /\d/u.test(digit) ? [text.slice(0, at) + String((Number(digit) + 3) % 10) + text.slice(at + 1)] : [],
  );
const swapped = (a: string, b: string): Slip =>
  each(new RegExp(`${a}|${b}`, 'gu'), ([text]) => (text === a ? b : a));
const to = (form: RegExp, by: string): Slip => each(form, () => by);
const listOf = /\d+(?:st|nd|rd|th)?(?: \([^()]*\d[^()]*\))/gu;

/** The numbers of a size list, put in another way. */
const inLists = (change: (values: string[]) => string[][]): Slip =>
  each(listOf, ([text]) =>
    change(text.split(/[ (),]+/u).filter((value) => value !== '')).map(
      ([first, ...rest]) => `${first} (${rest.join(', ')})`,
    ),
  );

const fabricsOf = (document: PatternDocument): string[] =>
  document.parts
    .filter(({ kind }) => kind === 'piece')
    .flatMap(({ blocks }) =>
      blocks.flatMap((block) => {
        const found = block.kind === 'paragraph' ? /^(?:Work in|Change to) (.+)\.$/u.exec(block.text) : null;
        return found ? [found[1]!] : [];
      }),
    );
const headingsOf = (document: PatternDocument, kind: Span['kind']): string[] => [
  ...new Set(refsOf(document).flatMap((span) => (span.kind === kind ? [span.text] : []))),
];
const othersThan = (text: string, all: readonly string[]): string[] =>
  all.filter((one) => one !== text).slice(0, 2);

/** Blocks of the pieces, dropped or moved. */
function blocksOfPieces(
  name: string,
  change: (block: PatternBlock, next: PatternBlock | undefined) => readonly PatternBlock[] | undefined,
  isTwo = false,
): MisprintClass {
  return {
    name,
    of: (document) =>
      document.parts.flatMap((part, p) =>
        part.kind !== 'piece'
          ? []
          : part.blocks.flatMap((block, b): Misprint[] => {
              const next = part.blocks[b + 1];
              const by = change(block, next);
              if (!by) return [];
              const without = isTwo ? withBlock(document, p, b + 1) : document;
              const about = `${part.heading}: ${'text' in block ? block.text : block.key}`;
              return [{ about, document: withBlock(without, p, b, ...by) }];
            }),
      ),
  };
}

/** Sentences of the other parts, dropped or doubled. */
function items(name: string, times: 0 | 2): MisprintClass {
  return {
    name,
    of: (document) =>
      document.parts.flatMap((part, p) =>
        part.blocks.flatMap((block, b): Misprint[] => {
          if (block.kind === 'list') {
            return block.items.map((item, at) => ({
              about: item.text,
              document: withBlock(document, p, b, {
                ...block,
                items: [
                  ...block.items.slice(0, at),
                  ...Array(times).fill(item),
                  ...block.items.slice(at + 1),
                ],
              }),
            }));
          }
          if (block.kind !== 'table') return [];
          return block.rows.map((row, at) => ({
            about: row.join(' '),
            document: withBlock(document, p, b, {
              ...block,
              rows: [...block.rows.slice(0, at), ...Array(times).fill(row), ...block.rows.slice(at + 1)],
            }),
          }));
        }),
      ),
  };
}

function parts(
  name: string,
  change: (document: PatternDocument, at: number) => PatternDocument | undefined,
): MisprintClass {
  return {
    name,
    of: (document) =>
      document.parts.flatMap(({ heading }, at): Misprint[] => {
        const misprinted = change(document, at);
        return misprinted ? [{ about: heading, document: misprinted }] : [];
      }),
  };
}

const isLine = (block: PatternBlock | undefined): boolean => block?.kind === 'line';
const ofSizes = (block: PatternBlock): boolean => 'text' in block && /^Sizes? \S+/u.test(block.text);
const cells =
  (table: string) =>
  (span: Span): boolean =>
    span.kind === 'cell' && span.table!.startsWith(table);

/** The classes of misprint that are tried. */
export const classes: readonly MisprintClass[] = [
  inTexts('a number of a line one more', inPieces, each(number, more)),
  inTexts('a number of a line one less', inPieces, each(number, less)),
  inTexts('a digit of a line changed', inPieces, each(number, otherDigit)),
  inTexts(
    'two digits of a line swapped',
    inPieces,
    each(/\d\d/gu, ([text]) => text[1]! + text[0]!),
  ),
  inTexts(
    'neighbours in a size list swapped',
    inPieces,
    inLists((values) =>
      values
        .slice(1)
        .map((value, at) => [...values.slice(0, at), value, values[at]!, ...values.slice(at + 2)]),
    ),
  ),
  inTexts(
    'a number of a size list dropped',
    inPieces,
    inLists((values) =>
      values.length > 2 ? values.map((_value, at) => values.filter((_one, other) => other !== at)) : [],
    ),
  ),
  inTexts(
    'a number of a size list doubled',
    inPieces,
    inLists((values) => values.map((value, at) => [...values.slice(0, at), value, ...values.slice(at)])),
  ),
  inTexts(
    'the count in brackets changed',
    inPieces,
    each(/(?<=\[[^\]]*)\d+(?=[^[]*\])/gu, ([text]) => [
      more([text] as RegExpMatchArray),
      String(Number(text) + 10),
    ]),
  ),
  inTexts(
    'a stitch for another',
    inPieces,
    each(
      /\b(?:sc|hdc|htr|dc|tr)(?=\d*tog|\b)/gu,
      ([text]) => ({ sc: 'hdc', hdc: 'dc', htr: 'tr', dc: 'htr', tr: 'dc' })[text]!,
    ),
  ),
  inTexts(
    'knit for purl',
    inPieces,
    each(/\b[kp](?=\d)/gu, ([text]) => (text === 'k' ? 'p' : 'k')),
  ),
  inTexts('two together for three', inPieces, to(/2tog/gu, '3tog')),
  inTexts(
    'decrease for increase',
    inPieces,
    each(
      /\b(?:Dec|dec|Inc|inc)\b/gu,
      ([text]) => ({ Dec: 'Inc', dec: 'inc', Inc: 'Dec', inc: 'dec' })[text]!,
    ),
  ),
  inTexts('right side for wrong side', inPieces, swapped('\\(RS\\)', '\\(WS\\)')),
  inTexts(
    'RS for WS',
    inPieces,
    each(/\b(?:RS|WS)\b/gu, ([text]) => (text === 'RS' ? 'WS' : 'RS')),
  ),
  inTexts(
    'the side that faces',
    inPieces,
    each(/\b(?:right|wrong)(?= side facing)/gu, ([text]) => (text === 'right' ? 'wrong' : 'right')),
  ),
  inTexts(
    'each end for the beginning',
    inPieces,
    each(/\b(\d+) sts? at each end/gu, ([, many]) => `${2 * Number(many)} sts at the beginning`),
  ),
  inTexts(
    'an edge for another',
    inPieces,
    each(/\b(?:neck|armhole|shaped)(?= edge)/gu, ([text]) =>
      text === 'neck' ? ['armhole', 'shaped'] : ['neck'],
    ),
  ),
  inTexts('an edge for the beginning', inPieces, to(/the (?:neck|armhole|shaped) edge/gu, 'the beginning')),
  inTexts('each side of the marker for evenly around', inPieces, (text) => [
    text.replace(/1 st at each side of the marker/u, '2 sts evenly around'),
    text.replace(/(?<=Dec \d+ sts) evenly around/u, ' at the marker'),
  ]),
  inTexts('bound off for held', inPieces, (text) => [
    text.replace(/^(?:Bind|Cast) off all (.+)\.$/u, 'Do not bind off: keep the $1 on the needle.'),
    text.replace(/^Do not (?:bind|cast) off: (?:keep|leave) the (.+) on .+\.$/u, 'Bind off all $1.'),
    text.replace(/^Do not fasten off.+$/u, 'Fasten off.'),
  ]),
  inTexts('a holder for the needle', inPieces, (text) => [
    text
      .replace(/keep (.+) on the needle/u, 'leave $1 on a holder')
      .replace(/^(Do not .+): leave (.+) on a holder\.$/u, '$1: leave $2 on a holder.'),
    text.replace(/leave (.+) on a holder\.$/u, 'keep $1 on the needle.'),
  ]),
  inTexts('left at an end otherwise', inPieces, (text) => [
    text.replace(/\b(?:bind|cast) off (the first)/u, 'sl st across $1'),
    text.replace(/\bsl st across (the first)/u, 'bind off $1'),
    text.replace('unworked, working', 'on a holder, working'),
    text.replace('on a holder, working', 'unworked, working'),
  ]),
  inTexts('the first for the last stitches', inPieces, (text) => [
    text.replace(
      /(?:bind off|cast off|sl st across) the first (.+?) and leave/u,
      'leave the last $1 unworked and leave',
    ),
  ]),
  inTexts(
    'rows for rounds',
    inPieces,
    each(/\b(?:row|round)(?=s?\b)(?!s? (?:ends?|the armhole)\b)/gu, ([text]) =>
      text === 'row' ? 'round' : 'row',
    ),
  ),
  inTexts(
    'every 2nd for every 4th',
    inPieces,
    each(/\bevery (?:2nd|4th)\b/gu, ([text]) => (text === 'every 2nd' ? 'every 4th' : 'every 2nd')),
  ),
  inTexts('times for more times', inPieces, (text) => [
    ...each(/(?<!more) times\b/gu, () => ' more times')(text, undefined as never, undefined as never).filter(
      () => /rep from/u.test(text),
    ),
    ...each(/ more times\b/gu, () => ' times in all')(text, undefined as never, undefined as never),
  ]),
  inTexts('how often something is repeated', inPieces, each(/(?<=rep from \* )\d+/gu, more)),
  inTexts('where stitches are taken up from', inPieces, (text, { part }, document) =>
    / left at the end of | along the last row of /u.test(text)
      ? othersThan(part.heading, headingsOf(document, 'part heading')).map((other) =>
          text.replace(/(left at the end of|along the last row of) [^,.]+/u, `$1 ${other}`),
        )
      : [],
  ),
  inTexts('an armhole for an edge', inPieces, (text) => [
    text.replace('round the armhole, as follows', 'along the edge, as follows'),
    text.replace('along the edge, as follows', 'round the armhole, as follows'),
    text.replace(' at the middle of the underarm', ''),
  ]),
  inTexts('over so many repeats', inPieces, each(/(?<= over )\d+(?=[^:]* repeats)/gu, more)),
  inTexts('over so many row ends', inPieces, each(/(?<= over )\d+(?=[^:]* row ends)/gu, more)),
  inTexts('the length of an edge', inPieces, (text) =>
    text.includes('spread evenly along')
      ? each(/\d+(?:\.\d+)?[½¼¾⅛⅜⅝⅞]?(?=[^:]* (?:cm|in)\.$)/gu, ([found]) =>
          /\.\d/u.test(found)
            ? (Number(found) + 0.3).toFixed(1)
            : `${Number(/^\d+/u.exec(found)![0]) + 1}${found.replace(/^\d+/u, '')}`,
        )(text.slice(text.indexOf('along')), undefined as never, undefined as never).map(
          (end) => text.slice(0, text.indexOf('along')) + end,
        )
      : [],
  ),
  inTexts(
    'the unit of an edge',
    inPieces,
    each(/(?<=\d[)½¼¾⅛⅜⅝⅞]*) (?:cm|in)(?=\.)/gu, ([text]) => (text === ' cm' ? ' in' : ' cm')),
  ),
  inTexts('a stretch of an edge under another name', inPieces, (text) => {
    const label =
      /^(?:Right front|Right neck|Back neck|Shells of the hem|Up one side|Down the other side)(?=[:,])/u.exec(
        text,
      )?.[0];
    return label ? [text.replace(label, label === 'Back neck' ? 'Right neck' : 'Back neck')] : [];
  }),
  blocksOfPieces('a line dropped', (block) => (isLine(block) ? [] : undefined)),
  blocksOfPieces('a line doubled', (block) => (isLine(block) ? [block, block] : undefined)),
  blocksOfPieces('a line on the first of several rounds dropped', (block) =>
    block.kind === 'line' && block.text.startsWith('The first of these') ? [] : undefined,
  ),
  blocksOfPieces('a line on how an edge comes out even dropped', (block) =>
    block.kind === 'line' && block.text.startsWith('To come out even') ? [] : undefined,
  ),
  // In which order sizes are told what is theirs changes nothing.
  blocksOfPieces(
    'two lines swapped',
    (block, next) =>
      isLine(block) && isLine(next) && !(ofSizes(block) && ofSizes(next!)) ? [next!, block] : undefined,
    true,
  ),
  blocksOfPieces('a paragraph of a piece dropped', (block) => (block.kind === 'paragraph' ? [] : undefined)),
  blocksOfPieces('a paragraph of a piece doubled', (block) =>
    block.kind === 'paragraph' ? [block, block] : undefined,
  ),
  blocksOfPieces('a heading of a stretch dropped', (block) => (block.kind === 'heading' ? [] : undefined)),
  inTexts(
    'a heading of a stretch for another',
    ({ kind }) => kind === 'stretch heading',
    (text, _span, document) => othersThan(text, headingsOf(document, 'stretch heading')),
  ),
  inTexts(
    'the fabric of a piece',
    ({ part, kind }) => part.kind === 'piece' && kind === 'paragraph',
    (text, _span, document) => {
      const fabric = /^(Work in|Change to) (.+)\.$/u.exec(text);
      return fabric
        ? othersThan(fabric[2]!, fabricsOf(document)).map((other) => `${fabric[1]!} ${other}.`)
        : [];
    },
  ),
  inTexts(
    'a number in a note of a piece',
    ({ part, kind }) => part.kind === 'piece' && kind === 'paragraph',
    each(number, more),
  ),
  inTexts(
    'the heading of a piece',
    ({ part, kind }) => part.kind === 'piece' && kind === 'part heading',
    (text, _span, document) => [`${text}s`, ...othersThan(text, headingsOf(document, 'part heading'))],
  ),
  inTexts(
    'the heading of another part',
    ({ part, kind }) => part.kind !== 'piece' && kind === 'part heading',
    (text) => [
      text === 'Gauge' ? 'Tension' : text === 'Tension' ? 'Gauge' : text.replace(/s$/u, ''),
      `${text} 2`,
    ],
  ),
  parts('a piece dropped', (document, at) =>
    document.parts[at]!.kind === 'piece' ? withPart(document, at) : undefined,
  ),
  parts('a piece doubled', (document, at) => {
    const part = document.parts[at]!;
    return part.kind === 'piece' ? withPart(document, at, part, part) : undefined;
  }),
  parts('two pieces swapped', (document, at) => {
    const [one, next] = [document.parts[at]!, document.parts[at + 1]];
    if (one.kind !== 'piece' || next?.kind !== 'piece') return undefined;
    return withPart(withPart(document, at + 1), at, next, one);
  }),
  parts('another part dropped', (document, at) =>
    document.parts[at]!.kind === 'piece' ? undefined : withPart(document, at),
  ),
  items('a sentence or a row of a table dropped', 0),
  items('a sentence or a row of a table doubled', 2),
  inTexts('a number of the materials', inPart('materials'), each(anyNumber, otherDigit)),
  inTexts('grams, metres, balls one more', inPart('materials'), each(number, more)),
  inTexts(
    'a size of the materials swapped',
    inPart('materials'),
    inLists((values) =>
      values
        .slice(1)
        .map((value, at) => [...values.slice(0, at), value, values[at]!, ...values.slice(at + 2)]),
    ),
  ),
  inTexts(
    'the size of a hook or needles',
    either(inPart('materials', 'gauge'), ({ part, kind }) => part.kind === 'piece' && kind === 'paragraph'),
    each(/\d+(?:\.\d+)?(?= mm)/gu, ([text]) => [String(Number(text) + 0.5), String(Number(text) * 10)]),
  ),
  inTexts(
    'a hook for needles',
    either(inPart('materials', 'gauge'), ({ part, kind }) => part.kind === 'piece' && kind === 'paragraph'),
    each(/\b(?:hook|needles)\b/gu, ([text]) => (text === 'hook' ? 'needles' : 'hook')),
  ),
  inTexts(
    'a unit of the materials',
    inPart('materials'),
    each(
      /(?<=\d[)½¼¾⅛⅜⅝⅞]* )(?:cm|in|m|yd|g)(?=[ ,])/gu,
      ([text]) => ({ cm: 'in', in: 'cm', m: 'yd', yd: 'm', g: 'oz' })[text]!,
    ),
  ),
  inTexts('a fabric of the materials', inPart('materials'), (text, { part }) => {
    void part;
    return [
      text.replace(/Body fabric/u, 'Rib'),
      text.replace(/\bRib\b/u, 'Body fabric'),
      text.replace(/ and /u, ', '),
    ];
  }),
  inTexts('buttons and cords', inPart('materials'), (text) =>
    /^(?:Buttons|Cords)/u.test(text) ? each(number, more)(text, undefined as never, undefined as never) : [],
  ),
  inTexts('a number of the gauge', inPart('gauge'), each(anyNumber, otherDigit)),
  inTexts(
    'what a gauge is counted over',
    inPart('gauge'),
    each(/\bto (?:10 cm|4 in)/gu, ([text]) => (text === 'to 10 cm' ? ['to 4 in', 'to 10 in'] : ['to 10 cm'])),
  ),
  inTexts('stitches for rows in the gauge', inPart('gauge'), (text) => [
    text.replace(/([\d.]+) sts and ([\d.]+) rows/u, '$2 sts and $1 rows'),
    text.replace(/([\d.]+) sts and ([\d.]+) rows/u, '$1 rows and $2 sts'),
  ]),
  inTexts('what a gauge is exactly', inPart('gauge'), (text) => [
    text.replace(/, exactly .+ to 10 cm/u, ''),
    text.replace(/(?<=^[^,]*) to (10 cm|4 in)(?! \()/u, ' to $1, exactly 20 sts and 28 rows to 10 cm'),
    ...each(/(?<=exactly .*)\d+(?:\.\d+)?(?= (?:sts|rows))/gu, ([found]) => (Number(found) + 0.1).toFixed(1))(
      text,
      undefined as never,
      undefined as never,
    ),
  ]),
  inTexts('a gauge to the half above or below', inPart('gauge'), (text) =>
    text.includes('exactly')
      ? each(/(?<!exactly .*)\d+(?:\.5)?(?= (?:sts|rows))/gu, ([found]) => [
          String(Number(found) + 0.5),
          String(Number(found) - 0.5),
        ])(text, undefined as never, undefined as never)
      : [],
  ),
  inTexts('needles that only the gauge tells', inPart('materials'), (text) => [
    text.replace(
      /^Needles in the size that gives the (gauge|tension), for (.+)\.$/u,
      '4 mm needles, for $2, or the size that gives the $1.',
    ),
    text.replace(
      /^.+ needles, for (.+), or the size that gives the (gauge|tension)\.$/u,
      'Needles in the size that gives the $2, for $1.',
    ),
    text.replace(/(?<=^Needles in .+, for ).+ and /u, ''),
    text.replace(/^Needles(?= in the size)/u, 'Hooks'),
  ]),
  inTexts(
    'a hook where there is none',
    either(inPart('gauge'), ({ part, kind }) => part.kind === 'piece' && kind === 'paragraph'),
    (text) => [text.replace(/\((?=flat|in the round)/u, '(6.5 mm hook, ')],
  ),
  inTexts('a digit of a measurement', cells('measurements'), each(anyNumber, otherDigit)),
  inTexts(
    'an eighth of a measurement',
    cells('measurements'),
    each(/[½¼¾⅛⅜⅝⅞]/gu, ([text]) => (text === '⅛' ? '⅜' : '⅛')),
  ),
  inTexts(
    'the name of a measurement',
    ({ kind, table }) => kind === 'label' && table!.startsWith('measurements'),
    (text) => [
      text.replace('start', 'end'),
      text.replace(/\bwidth\b/u, 'length'),
      text.replace(/^To fit/u, 'Finished'),
      text.replace(/^\S+/u, 'Other'),
    ],
  ),
  inTexts(
    'the unit of the measurements',
    ({ kind, part }) => kind === 'caption' && part.kind === 'measurements',
    (text) => [text.replace(/centimetres|inches/u, (unit) => (unit === 'inches' ? 'centimetres' : 'inches'))],
  ),
  inTexts(
    'a size above the measurements',
    ({ kind, part, text }) => kind === 'head' && part.kind === 'measurements' && text !== '',
    (text) => [`${text}X`, 'M2'],
  ),
  inTexts('a digit beside the schematic', cells('schematic measurements'), each(anyNumber, otherDigit)),
  inTexts(
    'an eighth beside the schematic',
    cells('schematic measurements'),
    each(/[½¼¾⅛⅜⅝⅞]/gu, ([text]) => (text === '⅛' ? '⅜' : '⅛')),
  ),
  inTexts(
    'the name of a measurement of the schematic',
    ({ kind, table }) => kind === 'label' && table === 'schematic measurements',
    (text) => [
      text.replace('start', 'end'),
      text.replace(/\bwidth\b/u, 'length'),
      text.replace(/: .+$/u, ': width'),
      text.replace(/(?<=^\S+\u2002)[^:]+/u, 'Other'),
    ],
  ),
  inTexts(
    'a letter of the schematic',
    ({ kind, table }) => kind === 'label' && table!.startsWith('schematic '),
    (text) => [
      text.replace(/^\p{L}+/u, 'Q'),
      text.replace(/^\p{L}+\u2002/u, ''),
      text.replace(/^\p{L}+/u, (letter) =>
        letter === letter.toLowerCase() ? letter.toUpperCase() : letter.toLowerCase(),
      ),
    ],
  ),
  inTexts('what a join of the schematic joins', cells('schematic joins'), (text) => [
    text.replace('first', 'last'),
    text.replace('last', 'first'),
    text.replace(/^.+? – /u, ''),
    text.replace(/(.+?) – (.+)/u, '$2 – $1'),
    text.replace('row ends', 'stitches'),
    text.replace(/^[^,]+/u, 'Other'),
  ]),
  inTexts(
    'the name of a join of the schematic',
    ({ kind, table }) => kind === 'label' && table === 'schematic joins',
    (text) => [`${text}s`, text.replace(/(?<=\u2002).+/u, 'Seam')],
  ),
  inTexts(
    'the caption of a table beside the schematic',
    ({ kind, table }) => kind === 'caption' && table!.startsWith('schematic '),
    (text) => [text.replace('schematic', 'drawing'), text.replace(/^The |^Joins /u, '')],
  ),
  inTexts('the order of the sizes', inPart('measurements'), (text) => [
    text.replace(/order: (\S+) \((\S+?)([,)])/u, 'order: $2 ($1$3'),
  ]),
  inTexts('what an abbreviation stands for', cells('abbreviations'), (text, _span, document) =>
    othersThan(
      text,
      refsOf(document)
        .filter(cells('abbreviations'))
        .map((span) => span.text),
    ),
  ),
  inTexts(
    'an abbreviation',
    ({ kind, table }) => kind === 'label' && table!.startsWith('abbreviations'),
    (text, _span, document) =>
      othersThan(
        text,
        refsOf(document)
          .filter(({ kind, table }) => kind === 'label' && table!.startsWith('abbreviations'))
          .map((span) => span.text),
      ),
  ),
  inTexts('whose terms', inPart('abbreviations'), swapped('US', 'UK')),
  inTexts('gauge for tension', inPart('materials'), swapped('gauge', 'tension')),
  inTexts('a number or a stitch in a note', inPart('notes'), (text) => [
    ...each(number, more)(text, undefined as never, undefined as never),
    ...each(/\b(?:sc|hdc|htr|dc|tr)\b/gu, ([found]) => (found === 'sc' ? 'dc' : 'sc'))(
      text,
      undefined as never,
      undefined as never,
    ),
    text.replace('does not count as a st', 'counts as the first sc'),
    text.replace(/sts (in|together)/u, 'sts $1 $1'),
  ]),
  inTexts(
    'stitches beside those that are taken up',
    (span) => inPieces(span) && span.text.includes('for the other side'),
    (text) => [
      text.replace('Take up the first', 'Take up the last'),
      text.replace('on a holder', 'unworked'),
      text.replace(/(?<=leaving the )\d+/u, (many) => String(Number(many) + 2)),
      text.replace(/(?<=and the last )\d+/u, (many) => String(Number(many) - 1)),
      text.replace('for the other side', 'for the neck'),
    ],
  ),
  inTexts(
    'stitches held in the middle',
    (span) => inPart('making up')(span) && span.text.includes(' in the middle, '),
    (text, span, document) => [
      text.replace('bind off', 'cast off'),
      text.replace(/ sts in the middle/u, ' rows in the middle'),
      text.replace(/^[^:]+/u, 'Sleeves'),
      ...each(number, more)(text, span, document),
    ],
  ),
  inTexts(
    'what is worked into a buttonhole',
    ({ part, text }) => part.kind === 'piece' && text.includes('in each chain space'),
    (text, span, document) => [
      ...each(number, more)(text, span, document),
      text.replace(/\b(?:sc|dc)\b/u, (stitch) => (stitch === 'sc' ? 'hdc' : 'tr')),
      text.replace('row', 'round'),
      text.replace(', the first of those below,', ','),
    ],
  ),
  inTexts('a number of a seam', inPart('making up'), each(number, otherDigit)),
  inTexts('how a seam is joined', inPart('making up'), (text) => [
    text.replace('row to row', 'stitch to stitch'),
    text.replace('stitch to stitch', 'row to row'),
    text.replace(/\brows on/u, 'sts on'),
  ]),
  inTexts('the name of a seam', inPart('making up'), (text) => [
    text.replace(/^(?:Side seams|Shoulders)/u, (name) => (name === 'Shoulders' ? 'Side seams' : 'Shoulders')),
  ]),
];
