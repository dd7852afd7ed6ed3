// Writes the service worker once the site is built: everything the site is made of is kept on the device, so that it
// works without a network after the first visit. Paths are relative to the worker, so any base folder works.
import { fileURLToPath } from 'node:url';

import { generateSW } from 'workbox-build';

/** An Astro integration; it has nothing to do while developing. */
export const offline = () => ({
  name: 'offline',
  hooks: {
    'astro:build:done': async ({ dir, logger }) => {
      const folder = fileURLToPath(dir);
      const { count, size, warnings } = await generateSW({
        globDirectory: folder,
        globPatterns: ['**/*.{html,js,css,woff2,svg,png,json,webmanifest}'],
        globIgnores: ['sw.js'],
        swDest: `${folder}sw.js`,
        mode: 'production',
        sourcemap: false,
        inlineWorkboxRuntime: true,
        maximumFileSizeToCacheInBytes: 8_000_000,
        // A new edition waits until the reader says so: nobody loses what is half typed.
        skipWaiting: false,
        clientsClaim: true,
        cleanupOutdatedCaches: true,
        // Built files carry their hash in their name.
        dontCacheBustURLsMatching: /_astro\//,
        // ?wall and the like change the look, not the page.
        ignoreURLParametersMatching: [/.*/],
        navigateFallback: '404.html',
      });
      for (const warning of warnings) logger.warn(warning);
      logger.info(`${count} files, ${Math.round(size / 1000)} kB, are kept for use without a network`);
    },
  },
});
