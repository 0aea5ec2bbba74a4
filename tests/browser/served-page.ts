import { build, preview, type PreviewServer } from 'vite';
import type { TestProject } from 'vitest/node';
import { ensureBrowser } from './browser';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the built page is served, with the headers it is served with everywhere. */
    address: string;
  }
}

/** Builds the page once for all browser tests and serves it as `npm start` does. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  ensureBrowser();
  // The tests say that they are tests by this; the page has to be the one that people get.
  const { NODE_ENV } = process.env;
  process.env.NODE_ENV = 'production';
  // The maps say what each file was made of; no file of the page names them, so nobody fetches them.
  await build({ logLevel: 'error', build: { sourcemap: 'hidden' } });
  process.env.NODE_ENV = NODE_ENV;
  const server: PreviewServer = await preview({ logLevel: 'error', preview: { port: 0, host: '127.0.0.1' } });
  project.provide('address', server.resolvedUrls!.local[0]!);
  return () => server.close();
}
