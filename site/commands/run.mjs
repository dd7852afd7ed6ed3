// Runs a file of ours, or a package's command (--package NAME), on the Node that the project pins, installing first.
import { spawnSync } from 'node:child_process';

import { ensurePackages, root } from './packages.mjs';

const args = process.argv.slice(2);
try {
  ensurePackages();
} catch (problem) {
  process.stderr.write(`Installing did not work: ${problem.message}\n`);
  process.exit(1);
}
const [command, rest] =
  args[0] === '--package' ? ['npx', ['--no-install', ...args.slice(1)]] : [`${root}node_modules/.bin/node`, args];
const options = args[0] === '--package' ? { cwd: root } : {};
const done = spawnSync(command, command === 'npx' ? rest : [`${root}${rest[0]}`, ...rest.slice(1)], {
  stdio: 'inherit',
  ...options,
});
process.exit(done.status ?? 1);
