import { readdirSync, readFileSync } from 'node:fs';

import { expect, test } from 'vitest';

const house = readFileSync('DEVELOPERS.md', 'utf8');

const foldersOf = (parent: string): string[] =>
  readdirSync(parent, { withFileTypes: true })
    .filter((one) => one.isDirectory())
    .map((one) => `${parent}/${one.name}`);

const named = ['lessons', 'quiz-bank', 'simulations', 'site', 'tests'].flatMap(foldersOf);

test.each(named)('%s has its line in DEVELOPERS.md', (folder) => {
  const [parent, name] = folder.split('/');
  const line =
    parent === 'tests' ? new RegExp(`^\\| \`tests\`.*\`${name}\``, 'm') : new RegExp(`^\\|.*\`${folder}\``, 'm');
  expect(house).toMatch(line);
});

test.each(foldersOf('site/islands'))('%s is named among the parts', (folder) =>
  expect(house).toMatch(new RegExp(`^\\| \`site/islands\`.*\`${folder.split('/')[2]}\``, 'm')),
);

test('every package of package.json has its line', () => {
  const { dependencies, devDependencies } = JSON.parse(readFileSync('package.json', 'utf8')) as Record<
    'dependencies' | 'devDependencies',
    Record<string, string>
  >;
  const table = house.slice(
    house.indexOf('## Dependencies'),
    house.indexOf('\n## ', house.indexOf('## Dependencies') + 5),
  );
  const missing = Object.keys({ ...dependencies, ...devDependencies }).filter(
    (name) => !table.includes(`\`${name}\``) && !name.startsWith('@types/') && !/^(eslint|prettier)-plugin/.test(name),
  );
  expect(missing).toEqual([]);
});
