import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const types: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.png': 'image/png',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
};

/** Serves a folder as a plain file server does, so that a test may change what is served between two visits. */
export async function serve(folder: string): Promise<{ url: string; stop: () => Promise<void> }> {
  const server: Server = createServer((request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname));
    let file = join(folder, path);
    if (existsSync(file) && statSync(file).isDirectory()) file = join(file, 'index.html');
    const found = file.startsWith(folder) && existsSync(file);
    response.writeHead(found ? 200 : 404, {
      'content-type': types[extname(found ? file : '.html')] ?? 'application/octet-stream',
      'cache-control': 'no-cache',
    });
    createReadStream(found ? file : join(folder, '404.html')).pipe(response);
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://localhost:${port}`,
    stop: () => new Promise((ended) => void (server.closeAllConnections(), server.close(() => ended()))),
  };
}
