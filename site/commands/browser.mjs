// Finds or installs a browser for the tests: Chromium's headless shell, Debian's or else the test tool's own. It does what
// the tests ask with a third less of the processor than the whole browser, and the pictures of the look are its letters.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

import { must } from './packages.mjs';

const SHELL = '/usr/bin/chromium-headless-shell';

/** Path of the system's headless shell; undefined where the test tool is to use its own. */
export const systemChromium = () => (existsSync(SHELL) ? SHELL : undefined);

/** Debian's, as root; false where it cannot be had so. */
function installDebians() {
  if (!existsSync('/etc/debian_version') || process.getuid?.() !== 0) return false;
  process.stderr.write("Installing Debian's Chromium for the browser tests (once) …\n");
  const aptGet = (...args) =>
    spawnSync('apt-get', args, { stdio: 'inherit', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } });
  aptGet('update', '-qq');
  return aptGet('install', '-y', '-qq', '--no-install-recommends', 'chromium-headless-shell').status === 0;
}

/** Makes sure that a Chromium can be started; throws a sentence when none can be had. */
export function ensureBrowser() {
  if (systemChromium() || installDebians()) return;
  must('npx', ['--no-install', 'playwright', 'install', 'chromium-headless-shell']);
}
