import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';

/** A copy of the source in a folder of its own, with the installed packages linked in. */
export interface Workshop {
  /** Puts text before the one place where `mark` stands in a file. @throws when it stands there never or twice */
  insert: (file: string, mark: string, text: string) => void;
  write: (file: string, text: string) => void;
  read: (file: string) => string;
  /** Runs a command in the copy; `said` is both its streams. */
  run: (command: string, args: string[]) => { status: number | null; said: string };
  clear: () => void;
}

const SOURCE = [
  ...['lessons', 'quiz-bank', 'simulations', 'site', 'tests'],
  ...[
    'astro.config.mjs',
    'package.json',
    'playwright.config.ts',
    'svelte.config.js',
    'tsconfig.json',
    'vitest.config.ts',
  ],
];

export function openWorkshop(): Workshop {
  const home = mkdtempSync(join(tmpdir(), 'ridge-to-bed-'));
  for (const name of SOURCE) cpSync(name, join(home, name), { recursive: true });
  symlinkSync(join(process.cwd(), 'node_modules'), join(home, 'node_modules'));
  const read = (file: string): string => readFileSync(join(home, file), 'utf8');
  const write = (file: string, text: string): void => {
    mkdirSync(dirname(join(home, file)), { recursive: true });
    writeFileSync(join(home, file), text);
  };
  return {
    read,
    write,
    insert: (file, mark, text) => {
      const [before, after, ...more] = read(file).split(mark);
      if (before === undefined || after === undefined || more.length > 0)
        throw new Error(`${file} holds ${JSON.stringify(mark)} not just once.`);
      write(file, `${before}${text}${mark}${after}`);
    },
    run: (command, args) => {
      const done = spawnSync(command, args, {
        cwd: home,
        encoding: 'utf8',
        env: { ...process.env, NO_COLOR: '1', FORCE_COLOR: '0', VITEST: '', NODE_ENV: '' },
      });
      return { status: done.status, said: `${done.stdout}${done.stderr}` };
    },
    clear: () => rmSync(home, { recursive: true, force: true }),
  };
}
