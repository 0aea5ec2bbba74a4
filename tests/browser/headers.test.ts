import { readFileSync } from 'node:fs';
import { expect, inject, it } from 'vitest';

const texts = ['Content-Security-Policy', 'X-Content-Type-Options', 'Referrer-Policy'];

it('every file is served with the headers that the README gives to hosts, the workers’ too', async () => {
  const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
  const address = inject('address');
  const page = await (await fetch(address)).text();
  const script = /src="\.\/(assets\/[^"]+\.js)"/.exec(page)![1]!;
  for (const file of ['', script, 'offline-worker.js', 'manifest.webmanifest']) {
    const { headers, ok } = await fetch(new URL(file, address));
    expect(ok, file).toBe(true);
    for (const header of texts) expect(readme).toContain(`${header}: ${headers.get(header)}`);
  }
  const policy = (await fetch(address)).headers.get('Content-Security-Policy')!;
  expect(policy).not.toMatch(/unsafe|https?:|\*/);
  expect(page).not.toMatch(/<script(?![^>]*src=)|\son\w+=|style=/);
});
