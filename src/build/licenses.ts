import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';
import { sourceArchive } from './source.ts';

const top = fileURLToPath(new URL('../..', import.meta.url));

/** A package whose code, or whose typeface, is in the build. */
export interface NamedPackage {
  readonly name: string;
  readonly version: string;
  readonly license: string;
  /** The text of its license. */
  readonly text: string;
}

/** Collects what builds are made of. */
export interface BundledPackages {
  /** For each build that is to be looked at. */
  plugin(): Plugin;
  /** All that was found, by name. */
  named(): NamedPackage[];
}

/**
 * The folder of the package that a module comes from; undefined for a module of the project.
 *
 * @example folderOf('/home/a/node_modules/@kurkle/color/dist/color.esm.js') // '/home/a/node_modules/@kurkle/color'
 */
export function folderOf(module: string): string | undefined {
  // What the bundlers put in themselves: their modules have no file.
  const made = /^\0(?:@oxc-project\+)?(vite|rolldown|runtime)\b/.exec(module);
  if (made) return join(top, 'node_modules', made[1] === 'vite' ? 'vite' : 'rolldown');
  return /^.*\/node_modules\/(?:@[^/]+\/)?[^/]+/.exec(module.replaceAll('\\', '/'))?.[0];
}

/** Collects the packages of every module that is in one of the builds. */
export function bundledPackages(): BundledPackages {
  const modules = new Set<string>();
  return {
    plugin: () => ({
      name: 'bundled packages',
      apply: 'build',
      generateBundle(_options, bundle) {
        for (const part of Object.values(bundle))
          if (part.type === 'chunk') for (const id of part.moduleIds) modules.add(id);
        // Style sheets are in no chunk.
        for (const id of this.getModuleIds()) if (/\.css(\?|$)/.test(id)) modules.add(id);
      },
    }),
    named() {
      const folders = new Set([...modules].flatMap((id) => folderOf(id) ?? []));
      return [...folders]
        .map(packageIn)
        .concat(embedded([...modules]))
        .sort(byName);
    },
  };
}

const byName = (one: NamedPackage, other: NamedPackage): number => one.name.localeCompare(other.name, 'en');

function packageIn(folder: string): NamedPackage {
  const { name, version, license } = JSON.parse(
    readFileSync(join(folder, 'package.json'), 'utf8'),
  ) as NamedPackage;
  const file = readdirSync(folder).find((one) => /^(licen[cs]e|copying)(\.(md|txt))?$/i.test(one));
  if (!file) throw new Error(`${name} has no file with its license: find its text before it is given on.`);
  return { name, version, license, text: readFileSync(join(folder, file), 'utf8') };
}

/** Files of others within a package, which begin with the license that they are under. */
function embedded(modules: readonly string[]): NamedPackage[] {
  return modules.flatMap((id) => {
    const [, within, name] = /node_modules\/((?:@[^/]+\/)?[^/]+)\/.*\/3rdparty\/([^/]+)\//.exec(id) ?? [];
    if (!within || !name) return [];
    const text = /^\s*\/\*\*?([\s\S]*?)\*\//.exec(readFileSync(resolve(id), 'utf8'))?.[1];
    if (!text) throw new Error(`${id} does not begin with its license: find its text before it is given on.`);
    const license = /Apache License/.test(text)
      ? 'Apache-2.0'
      : /free of charge/.test(text)
        ? 'MIT'
        : 'its own';
    return [{ name, version: `in ${within}`, license, text: text.replaceAll(/^ ?\* ?/gm, '') }];
  });
}

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

/** The page of licenses: text alone, without a script. */
export function licensePage(packages: readonly NamedPackage[]): string {
  const own = JSON.parse(readFileSync(join(top, 'package.json'), 'utf8')) as NamedPackage;
  const gpl = readFileSync(join(top, 'LICENSE'), 'utf8');
  const section = ({ name, version, license, text }: NamedPackage): string =>
    `<h2>${escaped(name)} <small>${escaped(version)}, ${escaped(license)}</small></h2>\n<pre>${escaped(text.trim())}</pre>`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>Licenses · Easewright</title>
<link rel="icon" href="./icon.svg" type="image/svg+xml">
<link rel="stylesheet" href="./licenses.css">
</head>
<body>
<main>
<h1>Licenses</h1>
<p>Easewright ${escaped(own.version)} is free software under the GNU General Public License, version 3 (${escaped(own.license)}). It comes without any warranty.</p>
<p>Its source comes with it, with what is needed to build it: <a href="./${sourceArchive}" download>${sourceArchive}</a>. It is not stored for use without a network.</p>
<p>It contains ${packages.length} works of others, each under its own license:</p>
<ul>
${packages.map(({ name, license }) => `<li>${escaped(name)} (${escaped(license)})</li>`).join('\n')}
</ul>
${packages.map(section).join('\n')}
<h2>GNU General Public License <small>version 3</small></h2>
<pre>${escaped(gpl.trim())}</pre>
</main>
</body>
</html>
`;
}
