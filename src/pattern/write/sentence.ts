import { longestWording as longestTemplate, type Wording } from '../../notebook';
import type { PatternNote, Sentence } from '../pattern-document';
import { inTerms, type Terms } from './terms';

/** Text of a person (a label, a size): it is put in as it stands, and no term in it is translated. */
export interface Theirs {
  readonly theirs: string;
}
export const theirs = (text: string): Theirs => ({ theirs: text });

export type Slots = Readonly<Record<string, string | number | Theirs>>;

const slot = /\{([a-z][a-z0-9_ ]*)\}/gu;

/** The names of the slots of a template, in the order they stand. */
export function slotsOf(template: string): string[] {
  return [...template.matchAll(slot)].map((found) => found[1]!);
}

/**
 * Why a person's template cannot stand instead of the notebook's own; undefined where it can. Every number has to
 * stay, and no slot may be named that there is none for.
 *
 * @example wrongTemplate('Work even.', ['rows']) // 'This wording leaves out {rows}: …'
 */
export function wrongTemplate(template: string, names: readonly string[]): string | undefined {
  if (template.trim() === '')
    return 'A sentence cannot be empty: write one, or go back to the notebook’s own.';
  if (template.length > longestTemplate) {
    return `A sentence has at most ${longestTemplate} characters; this one has ${template.length}.`;
  }
  const used = slotsOf(template);
  const missing = names.filter((name) => !used.includes(name));
  if (missing.length > 0) {
    const them = missing.map((name) => `{${name}}`).join(' and ');
    return `This wording leaves out ${them}: put ${missing.length > 1 ? 'them' : 'it'} where the ${missing.length > 1 ? 'numbers belong' : 'number belongs'}.`;
  }
  const unknown = used.find((name) => !names.includes(name));
  if (unknown !== undefined) {
    const offered =
      names.length > 0
        ? `; there ${names.length > 1 ? 'are' : 'is'} ${names.map((name) => `{${name}}`).join(', ')}`
        : '';
    return `This sentence has no {${unknown}}${offered}.`;
  }
  if (/[{}\n\r]/u.test(template.replace(slot, ''))) {
    return 'Braces stand only round the name of a number, as in {rows}, and a sentence is one line.';
  }
  return undefined;
}

/** A template with its slots filled. */
export function filled(template: string, slots: Readonly<Record<string, string>>): string {
  return template.replace(slot, (whole, name: string) => (Object.hasOwn(slots, name) ? slots[name]! : whole));
}

/** Makes the sentences of one document: in its terms, and in the person's words where they gave some. */
export class Sentences {
  readonly terms: Terms;
  readonly notes: PatternNote[] = [];
  readonly #wording: Readonly<Record<string, Wording>>;

  constructor(terms: Terms, wording: Readonly<Record<string, Wording>> = {}) {
    this.terms = terms;
    this.#wording = wording;
  }

  /** Words of ours in the document's terms. */
  say(text: string): string {
    return inTerms(text, 'US', this.terms);
  }

  /** Whether a person has put a sentence in words of their own. */
  isReworded(key: string): boolean {
    return Object.hasOwn(this.#wording, key);
  }

  make(kind: Sentence['kind'], key: string, template: string, slots: Slots = {}): Sentence {
    const own = this.say(template);
    const values = Object.fromEntries(
      Object.entries(slots).map(([name, value]) => [
        name,
        typeof value === 'object' ? shown(value.theirs) : this.say(String(value)),
      ]),
    );
    const theirWords = this.isReworded(key) ? this.#wording[key] : undefined;
    if (theirWords) {
      const template = inTerms(theirWords.template, theirWords.terms, this.terms);
      if (wrongTemplate(template, Object.keys(values)) === undefined) {
        return { kind, key, text: filled(template, values), template, slots: values, own };
      }
      this.notes.push({
        text: `Your wording “${theirWords.template}” no longer has the numbers this sentence needs, so the notebook’s own stands.`,
        about: { key },
      });
    }
    return { kind, key, text: filled(own, values), template: own, slots: values };
  }

  line(key: string, template: string, slots: Slots = {}): Sentence {
    return this.make('line', key, template, slots);
  }

  paragraph(key: string, template: string, slots: Slots = {}): Sentence {
    return this.make('paragraph', key, template, slots);
  }
}

/** A person's text on one line, as it is, in isolation from what stands beside it where it may run right to left. */
export function shown(text: string): string {
  const line = text
    .replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')
    .replace(/[\u202a-\u202e\u2066-\u2069]/gu, '')
    .trim();
  return rightToLeft.test(line) ? `\u2068${line}\u2069` : line;
}

const rightToLeft =
  /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}\u200f]/u;
