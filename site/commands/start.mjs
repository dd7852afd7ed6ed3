// `npm start`: installs what is missing, builds the site and serves it at http://localhost:4321/.
import { spawn } from 'node:child_process';
import { setTimeout as later } from 'node:timers/promises';

import { ensurePackages, must, root } from './packages.mjs';

const PORT = '4321';
const address = `http://localhost:${PORT}/`;

const isServed = () =>
  fetch(address).then(
    () => true,
    () => false,
  );

try {
  if (await isServed()) throw new Error(`something is served at ${address} already; stop it first.`);
  ensurePackages();
  must('npx', ['--no-install', 'astro', 'build']);
} catch (problem) {
  process.stderr.write(`Could not start: ${problem.message}\n`);
  process.exit(1);
}
const server = spawn('npx', ['--no-install', 'astro', 'preview', '--port', PORT], { cwd: root, stdio: 'inherit' });
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => server.kill(signal));
server.on('exit', (code) => process.exit(code ?? 0));
while (!(await isServed())) await later(100);
process.stdout.write(`Ridge to Bed is at ${address} (Ctrl+C stops it)\n`);
