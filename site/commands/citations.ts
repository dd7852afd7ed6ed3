import { methodWorks } from '../../simulations/rules/method-works.ts';
import { citedWorks } from '../../simulations/rules/works.ts';

/** The list of works as `simulations/rules/CITATIONS.md` holds it. */
export function citationsText(): string {
  const works = citedWorks().map(({ title, edition, rules }) => {
    const under = rules.map(({ id, clause }) => `\`${id}\`${clause === null ? '' : ` (${clause})`}`);
    return `- ${title}${edition === null ? '' : `, ${edition}`}: ${under.join(', ')}`;
  });
  return `# Published sources

Written by \`npm run cite\` from the rules; not to be edited. No standard was read in full: most rows rest on trade
articles and guides that quote it, as each rule says. Rules marked *common practice*, *model* or *from memory* rest on
no publication and stand on the sources page only.

## Rules of the trade
${works.join('\n')}

## Methods
Titles and years are from memory where no copy was at hand.

${methodWorks.map((one) => `- ${one.work}: ${one.for} (\`${one.file}\`)`).join('\n')}
`;
}
