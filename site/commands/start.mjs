// `npm start`: installs what is missing, builds the site and serves it at http://localhost:4321/.
import { spawn } from 'node:child_process';

import { ensurePackages, must, root } from './packages.mjs';

try {
  ensurePackages();
  must('npx', ['--no-install', 'astro', 'build']);
} catch (problem) {
  process.stderr.write(`Could not start: ${problem.message}\n`);
  process.exit(1);
}
const server = spawn('npx', ['--no-install', 'astro', 'preview', '--port', '4321'], { cwd: root, stdio: 'inherit' });
process.stdout.write('Ridge to Bed is at http://localhost:4321/ (Ctrl+C stops it)\n');
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => server.kill(signal));
server.on('exit', (code) => process.exit(code ?? 0));
