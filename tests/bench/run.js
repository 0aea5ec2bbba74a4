import { fileURLToPath, pathToFileURL } from 'node:url';
import { runnerImport } from 'vite';

const at = (file) => fileURLToPath(new URL(file, import.meta.url));
const read = async (file) => (await runnerImport(at(file), { configFile: false, logLevel: 'error' })).module;

const { bundled } = await read('../bundled.ts');
const { bench } = await read('./bench.ts');
// What is measured runs bundled, as it does in the page.
const measure = await import(pathToFileURL(await bundled('tests/bench/measure.ts')).href);
const thread = await bundled('tests/worker/serving-thread.ts');
process.exitCode = (await bench(measure, thread, at('../../dist'))) ? 0 : 1;
