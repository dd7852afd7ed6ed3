import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { build } from 'vite';

import { serve } from '../static-server.ts';

/** Bundles the page's side of the worker, and the worker, and serves them until `stop`. */
export async function serveWorkerPage(): Promise<{ url: string; stop: () => Promise<void> }> {
  const folder = mkdtempSync(join(tmpdir(), 'bed-worker-'));
  await build({
    configFile: false,
    publicDir: false,
    logLevel: 'error',
    base: './',
    resolve: { tsconfigPaths: true },
    worker: { format: 'es' },
    build: {
      outDir: folder,
      emptyOutDir: false,
      lib: { entry: `${process.cwd()}/tests/browser/worker/page.ts`, formats: ['es'], fileName: () => 'page.js' },
    },
  });
  const page = '<!doctype html><title>Worker</title><script type="module" src="page.js"></script>';
  writeFileSync(join(folder, 'index.html'), page);
  writeFileSync(join(folder, '404.html'), '');
  const site = await serve(folder);
  return {
    url: site.url,
    stop: async () => {
      await site.stop();
      rmSync(folder, { recursive: true });
    },
  };
}
