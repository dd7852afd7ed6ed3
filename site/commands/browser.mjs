// Finds or installs a browser for the tests. Chromium's headless shell is the first choice: it does what the tests ask
// with a third less of the processor than the whole browser, and the pictures of the look are its letters.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

import { must } from './packages.mjs';

const SHELL = '/usr/bin/chromium-headless-shell';
const SYSTEM = [SHELL, '/usr/bin/chromium', '/usr/bin/chromium-browser'];

/** Path of the system's Chromium; undefined where the test tool is to use its own. */
export const systemChromium = () => SYSTEM.find((path) => existsSync(path));

/** Whether pictures taken here can be held against the kept ones: the whole browser draws letters a little otherwise. */
export const drawsAsKept = () => [SHELL, undefined].includes(systemChromium());

/** Makes sure that a Chromium can be started; throws a sentence when none can be had. */
export function ensureBrowser() {
  if (existsSync(SHELL)) return;
  const debianRoot = existsSync('/etc/debian_version') && process.getuid?.() === 0;
  if (debianRoot) {
    process.stderr.write("Installing Debian's Chromium for the browser tests (once) …\n");
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    const install = (name) => ['install', '-y', '-qq', '--no-install-recommends', name];
    must('apt-get', ['update', '-qq'], { env });
    const shell = spawnSync('apt-get', install('chromium-headless-shell'), { env, stdio: 'inherit' });
    if (shell.status !== 0 && !systemChromium()) must('apt-get', install('chromium'), { env });
    return;
  }
  if (!systemChromium()) must('npx', ['--no-install', 'playwright', 'install', 'chromium']);
}
