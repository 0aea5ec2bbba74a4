import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

// `npm run published -- KIND FILE`: checks a file of published examples. Ends on 0 where none falls short, 1 where one
// does or its kind is not computed yet, and 2 where the file cannot be checked.
const entry = fileURLToPath(new URL('check-file.ts', import.meta.url));
const { checkFile, UnreadableFile } = (await runnerImport(entry, { configFile: false, logLevel: 'error' }))
  .module;

const [kind = '', file, ...more] = process.argv.slice(2);

try {
  if (file === undefined || more.length > 0) throw new UnreadableFile('Use: npm run published -- KIND FILE');
  // npm runs it at the top of the project; the name of the file is meant from where npm was called.
  const path = resolve(process.env.INIT_CWD ?? '.', file);
  const text = await readFile(path, 'utf8').catch((error) => {
    throw new UnreadableFile(`${file} cannot be read (${error.code}).`);
  });
  const { lines, exitCode } = checkFile(kind, text);
  console.log(lines.join('\n'));
  process.exitCode = exitCode;
} catch (error) {
  if (!(error instanceof UnreadableFile)) throw error;
  console.error(error.message);
  process.exitCode = 2;
}
