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
    testTimeout: 60_000,
    maxWorkers: 2,
  },
});
