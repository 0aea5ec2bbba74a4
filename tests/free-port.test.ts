import { createServer } from 'node:net';
import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it, onTestFinished } from 'vitest';
import { portTaken } from '../src/build/free-port';

const top = fileURLToPath(new URL('..', import.meta.url));

it('a port in use is said in one sentence, and no other port is taken: it would have other notebooks', async () => {
  const busy = createServer();
  await new Promise<void>((resolve) => busy.listen(0, 'localhost', resolve));
  const { port } = busy.address() as { port: number };
  const outDir = mkdtempSync(join(tmpdir(), 'easewright-'));
  writeFileSync(join(outDir, 'index.html'), '');
  onTestFinished(() => {
    busy.close();
    rmSync(outDir, { recursive: true });
  });
  const { code, text } = await new Promise<{ code: unknown; text: string }>((resolve) => {
    const vite = join(top, 'node_modules/vite/bin/vite.js');
    const given = [vite, 'preview', '--port', String(port), '--outDir', outDir];
    execFile(process.execPath, given, { cwd: top }, (error, out, err) =>
      resolve({ code: error?.code, text: `${out}${err}` }),
    );
  });
  expect(text.trim()).toBe(portTaken(port));
  expect(code).toBe(1);
});
