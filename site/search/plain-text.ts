/** One searchable stretch of a lesson: the words under one heading. */
export interface Stretch {
  heading: string;
  text: string;
}

/** What a component says in its attributes belongs to the text; its other attributes don't. */
const SAYING = /\b(?:title|caption|label)="([^"]*)"/g;

/** Words of a stretch of MDX without its marks, tags and imports. */
export function plainText(mdx: string): string {
  return mdx
    .replace(/^(?:import|export)\s.*$/gm, ' ')
    .replace(/\{\/\*[\s\S]*?\*\/\}/g, ' ')
    .replace(/<[^>]*>/g, (tag) => ` ${[...tag.matchAll(SAYING)].map((found) => found[1]).join('. ')} `)
    .replace(/\{[^}]*\}/g, ' ')
    .replace(/!?\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/[*_`#>|]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

/** A lesson's text by its second-level headings; what stands before the first has the heading ''. */
export function stretches(mdx: string): Stretch[] {
  const found: Stretch[] = [];
  let heading = '';
  let lines: string[] = [];
  const close = (): void => {
    const text = plainText(lines.join('\n'));
    if (text !== '' || heading !== '') found.push({ heading, text });
    lines = [];
  };
  for (const line of mdx.split('\n')) {
    const next = /^##\s+(.*)$/.exec(line)?.[1];
    if (next === undefined) lines.push(line);
    else {
      close();
      heading = plainText(next);
    }
  }
  close();
  return found;
}
