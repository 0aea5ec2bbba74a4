import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, it } from 'vitest';
import { opened } from './burst';
import { ownProfile } from './kept';

const built = readdirSync('dist', { recursive: true, encoding: 'utf8' });
const read = (file: string): string => readFileSync(join('dist', file), 'utf8');
const scripts = built.filter((file) => file.endsWith('.js'));
const own = ownProfile({ serviceWorkers: 'allow' });

describe('the page of licenses', () => {
  const page = read('licenses.html');

  it('names every package whose code is in any script of the build, with its license', () => {
    const packages = new Set<string>();
    for (const script of scripts) {
      // What is made of nothing but a helper of the bundler has no map.
      if (!built.includes(`${script}.map`)) continue;
      const { sources } = JSON.parse(read(`${script}.map`)) as { sources: string[] };
      for (const source of sources)
        for (const [, name] of source.matchAll(/node_modules\/((?:@[^/]+\/)?[^/]+)/g)) packages.add(name!);
    }
    expect(packages.size).toBeGreaterThan(10);
    expect([...packages]).toContain('workbox-precaching');
    expect([...packages]).toContain('hyperformula');
    expect([...packages].filter((name) => !page.includes(`<h2>${name} <small>`))).toEqual([]);
  });

  it('has the license of the typefaces, the GPL, what is embedded in packages, and where the source is', () => {
    expect(built.some((file) => /alegreya-sans.*\.woff2$/.test(file))).toBe(true);
    expect(page.match(/<h2>@fontsource\/alegreya[^]*?SIL OPEN FONT LICENSE/gi)).not.toBeNull();
    for (const name of ['bessel', 'jstat']) expect(page).toContain(`<h2>${name} <small>in hyperformula`);
    expect(page).toContain('TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION');
    const gpl = readFileSync('LICENSE', 'utf8').trim();
    expect(page.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"')).toContain(
      gpl.slice(0, 20_000).replaceAll('&amp;', '&'),
    );
    expect(page).not.toMatch(/<script|\son\w+=|style=/);
  });

  it('links to the source that the page was built from, which is stored for nobody who does not ask', async () => {
    expect(page).toMatch(/source [^<]*<a href="\.\/source\.tgz" download>/);
    const list = execFileSync('tar', ['-tzf', 'source.tgz'], { cwd: 'dist', encoding: 'utf8' });
    const files = list.trim().split('\n');
    const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
    const top = `easewright-${version}/`;
    expect(files.filter((file) => !file.startsWith(top) || /\/(node_modules|dist)\//.test(file))).toEqual([]);
    for (const file of ['src/main.ts', 'package.json', 'LICENSE', 'tests/browser/licenses.test.ts']) {
      expect(files).toContain(top + file);
      const inIt = execFileSync('tar', ['-xzOf', 'source.tgz', top + file], { cwd: 'dist' });
      expect(inIt.equals(readFileSync(file)), file).toBe(true);
    }
    const shown = await own.context.newPage();
    await shown.goto(new URL('licenses.html', inject('address')).href);
    const [file] = await Promise.all([
      shown.waitForEvent('download'),
      shown.getByRole('link', { name: 'source.tgz' }).click(),
    ]);
    expect(readFileSync(await file.path()).equals(readFileSync('dist/source.tgz'))).toBe(true);
    expect(read('offline-worker.js')).toContain('licenses.html');
    expect(read('offline-worker.js')).not.toContain('source.tgz');
  });

  it('is linked from the page and stored for use without a network', async () => {
    const first = await own.context.newPage();
    await opened(first, inject('address'));
    await first.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await first.reload();
    await first.getByRole('link', { name: 'Licenses' }).waitFor();
    await own.context.setOffline(true);
    const [page] = await Promise.all([
      own.context.waitForEvent('page'),
      first.getByRole('link', { name: 'Licenses' }).click(),
    ]);
    await page.getByRole('heading', { name: /^hyperformula/ }).waitFor();
    for (const width of [1280, 390]) {
      await page.setViewportSize({ width, height: 800 });
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    }
  });
});

it('no script of the build has an address of somebody’s sales', () => {
  const worker = scripts.find((file) => /worker-.*\.js$/.test(file) && read(file).includes('gpl-v3'));
  expect(worker).toBeDefined();
  for (const script of scripts) {
    expect(read(script).match(/[\w.+-]+@[\w-]+\.(?:com|org|net|io|eu)\b/g) ?? [], script).toEqual([]);
    expect(read(script), script).not.toContain('handsontable.com');
  }
});
