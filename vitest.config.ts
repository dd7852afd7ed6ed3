import { defineConfig } from 'vitest/config';

export default defineConfig({
  resolve: { tsconfigPaths: true },
  test: {
    include: ['tests/{unit,reference,property}/**/*.test.ts'],
    testTimeout: 60_000,
    maxWorkers: 2,
  },
});
