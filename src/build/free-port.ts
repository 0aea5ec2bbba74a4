import type { Plugin } from 'vite';

/**
 * Says in one sentence that the port is taken, and stops. Another port would be another origin, and notebooks are kept
 * by origin: whoever came by it would find none of theirs.
 */
export function freePort(): Plugin {
  return {
    name: 'free port',
    configurePreviewServer({ config, httpServer }) {
      const { port, strictPort } = config.preview;
      if (!strictPort) return;
      httpServer.prependListener('error', (error: NodeJS.ErrnoException) => {
        if (error.code !== 'EADDRINUSE') return;
        process.stderr.write(`${portTaken(port)}\n`);
        process.exit(1);
      });
    },
  };
}

/** What is said of a port that is taken. */
export function portTaken(port: number): string {
  return `Port ${port} is in use, perhaps by another window's \`npm start\`. Stop that one first, or choose a port with \`npm start -- --port ${port + 1}\`; each port has its own set of notebooks.`;
}
