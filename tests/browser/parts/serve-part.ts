import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { build } from 'vite';

import { serve } from '../static-server.ts';

/**
 * Bundles a part of the site by itself, laid open for a test by a script of this folder, and serves it until `stop`.
 * @param script its file name
 */
export async function servePart(script: string): Promise<{ url: string; stop: () => Promise<void> }> {
  const folder = mkdtempSync(join(tmpdir(), 'part-'));
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
      lib: { entry: `${process.cwd()}/tests/browser/parts/${script}`, formats: ['es'], fileName: () => 'page.js' },
    },
  });
  const page = '<!doctype html><title>Part</title><script type="module" src="page.js"></script>';
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
