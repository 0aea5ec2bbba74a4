import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { compileFunction } from 'node:vm';

/*
 * The examples in docstrings, to be run: `f(1) // 2`, the result behind the code or under it. A number is held to the
 * digits that are written, "…" stands for what is left out, and words after the result are for who reads.
 */

export interface Example {
  /** The file it stands in, from `src/`. */
  readonly file: string;
  readonly code: string;
  readonly says: string;
}

const source = new URL('../src/', import.meta.url);

export function examplesIn(room: string): Example[] {
  const files = readdirSync(new URL(`${room}/`, source), { recursive: true, encoding: 'utf8' });
  return files
    .filter((name) => /(?<!\.d)\.ts$/u.test(name))
    .sort()
    .flatMap((name) => {
      const file = `${room}/${name}`;
      const text = readFileSync(new URL(file, source), 'utf8');
      return [...text.matchAll(/@example([\s\S]*?)(?=\n\s*\*\/|\n\s*\*\s*\n|\s\*\/|\n\s*\*\s*@)/gu)].flatMap(
        ([, lines]) => examplesOf(file, lines!),
      );
    });
}

function examplesOf(file: string, text: string): Example[] {
  const found: { code: string; says: string }[] = [];
  for (const line of text.split('\n')) {
    const [, code = '', says] = /^((?:'[^']*'|`[^`]*`|"[^"]*"|(?!\/\/)[^'"`])*)(?:\/\/(.*))?$/u.exec(
      line.replace(/^\s*\*/u, '').trim(),
    ) ?? ['', line];
    const last = found.at(-1);
    // Code goes on until a result has been told; a comment before any code is for who reads.
    if (code.trim() !== '') {
      if (!last || last.says !== '') found.push({ code, says: '' });
      else last.code += `\n${code}`;
    }
    const now = found.at(-1);
    if (says !== undefined && now) now.says += ` ${says.trim()}`;
  }
  return found.map(({ code, says }) => ({ file, code: code.trim(), says: says.trim() }));
}

/** What the code of an example gives, with the names of its file and those that are given. */
export async function worked(
  { file, code }: Example,
  given: Readonly<Record<string, unknown>>,
): Promise<unknown> {
  const own = (await import(/* @vite-ignore */ fileURLToPath(new URL(file, source)))) as Record<
    string,
    unknown
  >;
  const names = { ...given, ...own };
  const run = compileFunction('return eval(code)', ['code', ...Object.keys(names)]) as (
    ...values: unknown[]
  ) => unknown;
  return run(code, ...Object.values(names));
}

/** A result as it is written: what a value has to be, or undefined where it is told in words alone. */
export function asWritten(says: string): ((value: unknown) => boolean) | undefined {
  try {
    return new Written(says).value();
  } catch (problem) {
    if (problem instanceof SyntaxError) return undefined;
    throw problem;
  }
}

type Holds = (value: unknown) => boolean;

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

/** Reads a result from its beginning. */
class Written {
  #rest: string;

  constructor(text: string) {
    this.#rest = text;
  }

  #accept(form: RegExp): string | undefined {
    const found = form.exec(this.#rest)?.[0];
    if (found !== undefined) this.#rest = this.#rest.slice(found.length).trimStart();
    return found?.trim();
  }

  value(): Holds {
    const number = this.#accept(/^[-−]?(?:\d[\d_]*(?:\.\d+)?|Infinity)(?![\w–])/u);
    if (number !== undefined) return sameNumber(number.replace('−', '-').replaceAll('_', ''));
    const text = this.#accept(/^(?:'[^']*'|"[^"]*"|`[^`]*`)/u)?.slice(1, -1);
    if (text !== undefined) {
      const parts = text
        .replaceAll('\\n', '\n')
        .replaceAll('\\\\', '\\')
        .split('…')
        .map((part) => part.replace(/[.*+?^${}()|[\]\\]/gu, String.raw`\$&`));
      const form = new RegExp(`^${parts.join('[^]*')}$`, 'u');
      // A space that does not break is written as any other.
      return (value) => typeof value === 'string' && form.test(value.replaceAll('\u00a0', ' '));
    }
    const word = this.#accept(/^(?:true|false|null|undefined)\b/u);
    if (word !== undefined) return (value) => String(value) === word;
    if (this.#accept(/^\[/u) !== undefined) return this.#list();
    if (this.#accept(/^\{/u) !== undefined) return this.#object();
    throw new SyntaxError(this.#rest);
  }

  #list(): Holds {
    const before: Holds[] = [];
    let after: Holds[] | undefined;
    while (this.#accept(/^\]/u) === undefined) {
      if (this.#accept(/^…/u) !== undefined) after = [];
      else (after ?? before).push(this.value());
      this.#accept(/^,/u);
    }
    return (value) => {
      if (!Array.isArray(value)) return false;
      const all = after ? value.length >= before.length + after.length : value.length === before.length;
      return (
        all &&
        before.every((holds, at) => holds(value[at])) &&
        (after ?? []).every((holds, at) => holds(value[value.length - after!.length + at]))
      );
    };
  }

  #object(): Holds {
    const parts = new Map<string, Holds>();
    let more = false;
    while (this.#accept(/^\}/u) === undefined) {
      if (this.#accept(/^…/u) !== undefined) more = true;
      else {
        const key = this.#accept(/^(?:\w+|'[^']*')/u)?.replaceAll("'", '');
        if (key === undefined) throw new SyntaxError(this.#rest);
        // A name alone is what the code calls so.
        parts.set(key, this.#accept(/^:/u) === undefined ? () => true : this.value());
      }
      this.#accept(/^,/u);
    }
    return (value) =>
      isObject(value) &&
      (more || Object.keys(value).length === parts.size) &&
      [...parts].every(([key, holds]) => key in value && holds(value[key]));
  }
}

function sameNumber(written: string): Holds {
  const number = Number(written);
  const half = 0.5000001 * 10 ** -(written.split('.')[1]?.length ?? 15);
  return (value) => typeof value === 'number' && (value === number || Math.abs(value - number) <= half);
}
