import { createServer } from 'node:http';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { securityHeaders } from '../../../lib/cli/site/security-headers';

const PAGE =
  '<!doctype html><html lang="en"><title>storage</title><script type="module" src="/storage.js"></script></html>';

const bundle = async (): Promise<string> => {
  const { outputFiles } = await build({
    entryPoints: [fileURLToPath(new URL('storage-page.ts', import.meta.url))],
    bundle: true,
    write: false,
    format: 'esm',
    target: 'es2022',
  });
  return outputFiles[0]?.text ?? '';
};

/** A site of one page that holds the storage alone, with the headers of the real one; `/sandboxed` has an opaque origin. */
export const startStorageSite = async (): Promise<{ readonly address: string; readonly stop: () => Promise<void> }> => {
  const script = await bundle();
  const server = createServer((request, response) => {
    const sandboxed = request.url === '/sandboxed';
    for (const [name, value] of securityHeaders([], []))
      response.setHeader(
        name,
        sandboxed && name === 'Content-Security-Policy' ? `${value}; sandbox allow-scripts` : value,
      );
    // A page of an opaque origin may load its own script only as one of another origin.
    if (request.url === '/storage.js') {
      response.setHeader('Access-Control-Allow-Origin', '*');
      response.setHeader('Cross-Origin-Resource-Policy', 'cross-origin');
      response.setHeader('Content-Type', 'text/javascript').end(script);
    } else response.setHeader('Content-Type', 'text/html; charset=utf-8').end(PAGE);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const at = server.address();
  if (at === null || typeof at === 'string') throw new Error('the site has no port');
  return {
    address: `http://127.0.0.1:${at.port}`,
    stop: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => {
          resolve();
        });
      }),
  };
};
