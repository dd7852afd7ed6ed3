import { fileURLToPath } from 'node:url';

import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: {
    tsconfigPaths: true,
    // The package names no entry for Node.
    alias: { '@xapi/cmi5': fileURLToPath(new URL('node_modules/@xapi/cmi5/dist/Cmi5.esm.js', import.meta.url)) },
  },
  test: {
    include: ['tests/{unit,reference,property,fuzz,adding}/**/*.test.ts'],
    // The core runs as it stands, as from the command line: rewritten for the test tool's own modules it takes five times as long.
    server: { deps: { external: [/\/(simulations|quiz-bank)\/.*\.ts$/] } },
    // Files share what they import: none changes it, and the one that stands in for the browser's storage takes that back.
    isolate: false,
    testTimeout: 60_000,
    maxWorkers: 2,
  },
});
