import { readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import type { Plugin } from 'vite';

const top = fileURLToPath(new URL('../..', import.meta.url));

/**
 * The name of the archive of the project's own source, beside the built page. Servers unpack what ends with `.gz` on its
 * way, and it would no longer be what its name says.
 */
export const sourceArchive = 'source.tgz';

/** All that the project is made of, at its top. */
const parts = [
  ...['src', 'static', 'tests'],
  ...['package.json', 'package-lock.json', 'svelte.config.js', 'vite.config.ts', 'tsconfig.json'],
  ...['eslint.config.js', '.gitignore', '.npmrc', '.prettierignore', '.prettierrc.json'],
  ...['README.md', 'DEVELOPERS.md', 'LICENSE'],
];
/** What tools leave behind in a folder. */
const leftBehind = /^\.|^(node_modules|dist|reports|coverage)$|\.log$/;

/** The project's own files as a clone of it has them, by their way from its top, with "/" between folders. */
export function projectFiles(): string[] {
  return filesIn(top, parts);
}

/** The files that some files and folders of a root come to, without what tools leave behind in them. */
export function filesIn(root: string, paths: readonly string[]): string[] {
  const within = (path: string): string[] =>
    statSync(join(root, path)).isDirectory()
      ? readdirSync(join(root, path))
          .filter((name) => !leftBehind.test(name))
          .sort()
          .flatMap((name) => within(`${path}/${name}`))
      : [path];
  return paths.flatMap(within);
}

/**
 * An archive in the ustar format (POSIX.1-2017, "pax", section "ustar Interchange Format"), packed with gzip. The same
 * files make the same bytes: it says no time and no owner.
 *
 * @param files their names, of at most 255 bytes, and what is in them
 * @throws Error where a name is too long
 * @example archived([{ name: 'page-1/a.txt', content: Buffer.from('a') }])
 */
export function archived(files: readonly { name: string; content: Buffer }[]): Buffer {
  const blocks = files.flatMap(({ name, content }) => [
    headerOf(name, content.length),
    content,
    Buffer.alloc(-content.length & 511),
  ]);
  // Two empty blocks end an archive.
  return gzipSync(Buffer.concat([...blocks, Buffer.alloc(1024)]), { level: 9 });
}

function headerOf(name: string, size: number): Buffer {
  // A name of more than 100 bytes is cut between two folders.
  const cut = name.length > 100 ? name.indexOf('/', name.length - 101) : -1;
  const [folder, rest] = [name.slice(0, Math.max(cut, 0)), name.slice(cut + 1)];
  if (Buffer.byteLength(rest) > 100 || Buffer.byteLength(folder) > 155 || /[^ -~]/.test(name))
    throw new Error(`${name} is no name for an archive.`);
  const header = Buffer.alloc(512);
  const octal = (number: number, digits: number): string => number.toString(8).padStart(digits, '0');
  header.write(rest, 0);
  header.write(octal(0o644, 7), 100);
  header.write(octal(0, 7), 108);
  header.write(octal(0, 7), 116);
  header.write(octal(size, 11), 124);
  header.write(octal(0, 11), 136);
  header.write(' '.repeat(8), 148);
  header.write('0', 156);
  header.write('ustar\x0000', 257, 'latin1');
  header.write(folder, 345);
  // The sum is of the header with spaces where it stands itself.
  const sum = header.reduce((before, byte) => before + byte, 0);
  header.write(`${octal(sum, 6)}\0 `, 148, 'latin1');
  return header;
}

/** Puts the project's own source beside the built page, as section 6 of its license asks for. */
export function source(): Plugin {
  return {
    name: 'source',
    apply: 'build',
    writeBundle({ dir }) {
      const { name, version } = JSON.parse(readFileSync(join(top, 'package.json'), 'utf8')) as {
        name: string;
        version: string;
      };
      const files = projectFiles().map((path) => ({
        name: `${name}-${version}/${path}`,
        content: readFileSync(join(top, path)),
      }));
      writeFileSync(join(dir!, sourceArchive), archived(files));
    },
  };
}
