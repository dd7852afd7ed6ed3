import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: { tsconfigPaths: true },
  test: { include: ['tests/mutate/**/*.mutate.ts'], testTimeout: 600_000, reporters: ['default'] },
});
