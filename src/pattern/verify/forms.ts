/**
 * The sentences of a piece that are understood, in either craft's words, US or UK. A count that is an en dash is none:
 * the size that is followed has nothing of it.
 */

const n = String.raw`(\d+|–)`;
const st = '(?:sts?|stitch(?:es)?)';
const row = '(?:rows?|rounds?|rnds?)';
const whole = (source: string): RegExp => new RegExp(`^${source}$`, 'iu');
const part = (source: string): RegExp => new RegExp(source, 'iu');

// How a piece begins.
export const castOn = whole(String.raw`(?:cast on|co)\s+${n}\s+${st}`);
export const chain = whole(String.raw`(?:ch|chain)\s+${n}`);
export const roundIntoChain = whole('the next round is worked into the chain');
export const rowIntoChain = part('^the next row is worked into the chain');
export const intoChain = whole(
  String.raw`.*?in the\s+(\d+)(?:st|nd|rd|th)\s+ch from hook(\s*\(the skipped ch count as .*?\)|\s*\(the missed ch count as .*?\))?(?:\s+and in each ch across)?`,
);
export const eachChain = whole(String.raw`\S+\s+in each ch around`);
export const firstSide = whole('row 1 is a (right|wrong)-side row');
export const heldStitches = part(
  String.raw`^take up\s+(?:the\s+)?(.*?)(?:\s+of the\s+\d.*?)?\s+left at the end of\s`,
);
export const alongLastRow = part(String.raw`^pick up\s+(.*?)\s+along the last row of\s`);
const alongEdge = '(evenly round the armhole|round the armhole, as follows|along the edge, as follows)';
export const picked = whole(
  String.raw`with the (right|wrong) side facing,.*?\bpicks? up\s+${n}\s+${st}\s+${alongEdge}`,
);
export const workedAlong = whole(
  String.raw`with the (right|wrong) side facing,.*\bwork\s+\S+\s+${alongEdge}`,
);

// An edge that is picked up, stretch by stretch.
export const edgeStretch = whole(
  String.raw`${n} ${st}(?: over ${n} (?:row ends?|sts?), about (?:${n} in every (one|\d+|–)|.*)|, one in each st| over (?:${n}|.*) repeats?, (?:about )?(?:${n} in each|.*)|, spread evenly along .*)\.`,
);
export const groups = part('^to come out even(?::|, as follows)');

// Rows, one at a time or several.
export const even = whole(
  String.raw`work\s+${n}\s+(?:more\s+)?${row}\s+(?:even(?:ly)?|in\s+(?:(?:\S.*\s)?rib(?:bing)?|(?:stockinette|stocking|garter)(?:\s+stitch)?))`,
);
export const rowLine = new RegExp(
  String.raw`^(?:(next|same)(?:\s+(\d+))?\s+${row}|${row}\s+(\d+)(?:\s*[–-]\s*(\d+))?)\s*(?:\((RS|WS)\))?\s*:\s*(.*)$`,
  'isu',
);
export const inRepeats = whole(
  String.raw`(dec|inc)\s+${n}\s+${st}\s+in\s+(?:each of the\s+${n}\s+repeats|the repeat)`,
);
export const evenly = whole(String.raw`(dec|inc)\s+${n}\s+${st}\s+evenly(?:\s+(?:across|around))?`);

// Shaping over rows.
export const shaping = part(String.raw`^(?:dec|inc)(?:rease)?\s`);
export const shapedOwn = whole(`shape the next ${n} ${row} as follows for your size`);
export const namedOwn = whole(`work ${n} ${row}, shaping as follows for your size; .*`);
export const namedRows = whole(`work ${n} ${row}; of these, (.*)`);
export const onNamedRows = whole(
  String.raw`((?:dec|inc)\s.*?)\s+(?:on|of)\s+${row}\s+(\d[\d\s,–-]*(?:and\s+[\d–\s]+)?)`,
);
export const firstOfThese = whole(
  String.raw`the first of these rounds: (.*?)\. each one after it has 1 st (fewer between the decreases|more between the increases)`,
);

// Stitches left or added at the ends of a row.
const leaving = '(?:sl st|ss) across|(?:bind|cast) off';
const adding = 'cast on|add a foundation of';
export const ends = part('^on the (next|same) (?:row|round),');
export const worksInAll = part(
  String.raw`working (?:the other )?(\d+|–) sts? (?:in all )?as follows(?:, that (?:row|round) included)?$`,
);
export const adds = part(adding);
export const leaveStart = part(String.raw`(?:${leaving})\s+the first\s+${n}\s+${st}`);
export const leaveEnd = part(String.raw`leave the last\s+${n}\s+${st}`);
export const addStart = part(String.raw`${n}\s+${st}\s+at the start`);
export const addEnd = part(String.raw`${n}\s+${st}\s+at the end`);
export const leftOnRow = whole(
  String.raw`(?:(?:${leaving})\s+the first\s+${n}\s+${st},\s+then\s+)?work even(?: to the end|,\s+leaving the last\s+${n}\s+${st}\s+(?:unworked|on a holder))`,
);
export const addedOnRow = whole(
  String.raw`(?:(?:${adding})\s+${n}\s+${st},\s+then\s+)?work even to the end(?:,\s+then\s+(?:${adding})\s+${n}\s+${st})?`,
);
export const onEachRow = whole(
  String.raw`(?:(${leaving})|${adding})\s+${n}\s+${st}\s+at the (?:start|beginning) of (?:each of )?the next\s+${n}\s+${row}(?:,\s+working the others even)?`,
);

// How a piece ends, and the count that may stand after any sentence.
export const ended = whole(
  String.raw`(?:fasten off|(?:bind|cast) off all(?:\s+${n})?(?:\s+${st})?|do not (?:bind|cast) off: (?:keep|leave) the\s+${n}\s+${st} on (?:the needle|a holder)|do not fasten off: keep the last\s+${n}\s+${st} open)`,
);
export const stated = part(String.raw`\s*\[\s*(\d+|–)\s+sts?\s*\]\s*\.?$`);

/** The number in a form's place for one: none where it is an en dash, or not there. */
export function amount(digits: string | undefined): number {
  return digits === undefined || digits === '–' ? 0 : Number(digits);
}
