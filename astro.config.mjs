import mdx from '@astrojs/mdx';
import svelte from '@astrojs/svelte';
import { defineConfig } from 'astro/config';

import { LICENCES, licences } from './site/packages/licences.mjs';
import { offline } from './site/packages/offline.mjs';
import { wholeStyles } from './site/packages/whole-styles.mjs';

// A school may serve the site from any folder; BASE_PATH names it ('/' unless told).
const base = process.env.BASE_PATH ?? '/';

export default defineConfig({
  srcDir: './site',
  publicDir: './site/public',
  output: 'static',
  base,
  trailingSlash: 'always',
  integrations: [svelte(), mdx(), licences(), offline()],
  // Nothing is loaded from another host and nothing inline runs: the policy is part of the product.
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data: blob:",
        "worker-src 'self'",
        "object-src 'none'",
        "base-uri 'self'",
        "form-action 'self'",
      ],
    },
  },
  build: { format: 'directory', inlineStylesheets: 'never' },
  markdown: { syntaxHighlight: false },
  devToolbar: { enabled: false },
  vite: {
    plugins: [wholeStyles()],
    worker: { format: 'es' },
    resolve: { tsconfigPaths: true },
    build: {
      // Without this the styles are made smaller for the newest browsers alone: underlines were lost in WebKit.
      cssTarget: ['chrome111', 'firefox114', 'safari16.4'],
      // The bench's picture carries three.js and is loaded only when in view: its size has its own budget in the bench.
      chunkSizeWarningLimit: 700,
      license: { fileName: LICENCES },
      // Astro marks MDX modules with a directive of its own; a warning for each lesson would bury a real one.
      rolldownOptions: { checks: { moduleLevelDirective: false } },
    },
    experimental: {
      renderBuiltUrl: (_file, { hostType }) => (hostType === 'js' ? { relative: true } : undefined),
    },
  },
});
