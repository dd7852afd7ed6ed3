import { describe, expect, it } from 'vitest';

import { parts } from '@site/components/parts.ts';
import { finder } from '@site/islands/search/find.ts';
import { searchDocuments } from '@site/search/documents.ts';
import { plainText, stretches } from '@site/search/plain-text.ts';
import { shell } from '@site/messages/en/shell.ts';

describe('a lesson as searchable text', () => {
  it('drops marks, tags, imports and expressions and keeps what is said', () => {
    expect(
      plainText(
        'import x from \'y\';\n**Press**, then [move](/bench/) it <Fact id="a.b" /> by `hand` {1 + 1}.\n<WrongIdea title="more is better">No.</WrongIdea>',
      ),
    ).toBe('Press , then move it by hand . more is better No.');
  });

  it('splits at second-level headings and keeps what stands before the first', () => {
    expect(stretches('Intro.\n\n## One\ntext\n### deeper\nmore\n## Two\n')).toEqual([
      { heading: '', text: 'Intro.' },
      { heading: 'One', text: 'text deeper more' },
      { heading: 'Two', text: '' },
    ]);
  });
});

describe('finding', () => {
  const document = { kind: 'term', section: '', path: '/terms/#a' } as const;
  const find = finder([
    { ...document, id: 0, title: 'Skin', text: 'The dry film on ridges left open.' },
    { ...document, id: 1, title: 'Open time', text: 'How long combed mortar takes a tile; skin ends it.' },
    { ...document, id: 2, title: 'Lippage', text: `${'word '.repeat(80)}step between edges` },
  ]);
  const titles = (words: string) => find(words).map((one) => one.document.title);

  it('puts a title before a mention', () => expect(titles('skin')).toEqual(['Skin', 'Open time']));
  it('wants every word', () => expect(titles('skin tile')).toEqual(['Open time']));
  it('forgives a beginning and a near miss', () => {
    expect(titles('lipp')).toEqual(['Lippage']);
    expect(titles('lipage')).toEqual(['Lippage']);
  });
  it('shows the words around what was found', () => {
    expect(find('edges')[0]?.excerpt).toMatch(/^… .*step between edges$/);
  });
});

describe('what is searched', () => {
  const documents = searchDocuments([]);

  it('leads to every part by a word of what it does', () => {
    const find = finder(documents);
    for (const { path, name } of parts) expect(find(shell[name])[0]?.document.path, name).toBe(path);
    expect(find('bags joints flatness')[0]?.document.path).toBe('/job/');
    expect(find('hand-ins class believes')[0]?.document.path).toBe('/desk/');
  });

  it('has words under every title', () =>
    expect(documents.filter((one) => one.text.length < 15 && one.kind !== 'module')).toEqual([]));
});
