import type { TrowelSetup } from '../../../simulations/bed/types.ts';
import { meanBedMm } from '../../../simulations/trowel/notch.ts';
import { template } from '../../engine/template.ts';
import { apart } from '../../jobs/apart.ts';
import { trowels } from '../../jobs/trowels.ts';
import type { IdeaId } from '../../wrong-ideas/idea.ts';
import { depthIsTheBed } from '../../wrong-ideas/depth-is-the-bed.ts';
import { biggerIsSafer } from '../../wrong-ideas/bigger-is-safer.ts';
import { widthForDepth } from '../../wrong-ideas/width-for-depth.ts';

const ranked = (list: readonly TrowelSetup[], by: (trowel: TrowelSetup) => number): number[] | null =>
  apart(list.map(by), 0.04)
    ? list.map((_, at) => at).sort((a, b) => by(list[a] as TrowelSetup) - by(list[b] as TrowelSetup))
    : null;

/** Put four trowels in order by the mortar they leave. */
export const leastToMost = template({
  id: 'reading-a-notch/least-to-most',
  outcomes: ['mortar-a-notch-leaves'],
  ideas: ['depth-is-the-bed', 'width-for-depth', 'bigger-is-safer'],
  draw: (draw) => {
    const list = draw.some(draw.sold(trowels), 4).sort((a, b) => meanBedMm(a) - meanBedMm(b));
    if (!apart(list.map(meanBedMm), 0.12)) return null;
    const orders: { idea: IdeaId; order: number[] | null }[] = [
      { idea: depthIsTheBed.id, order: ranked(list, depthIsTheBed.bedMm) },
      { idea: widthForDepth.id, order: ranked(list, (one) => meanBedMm(widthForDepth.swaps(one))) },
      { idea: biggerIsSafer.id, order: ranked(list, biggerIsSafer.opening) },
    ];
    const seen = new Set(['0123']);
    const ideas = orders.flatMap(({ idea, order }) => {
      const name = order?.join('') ?? '';
      if (order === null || seen.has(name)) return [];
      seen.add(name);
      return [{ idea, order }];
    });
    return ideas.length === 0 ? null : { list, ideas };
  },
  pose: ({ list, ideas }, say) => ({
    story: [say.t('story')],
    ask: say.t('ask'),
    answer: { kind: 'order', steps: list.map(say.notch), first: say.t('least'), last: say.t('most'), ideas },
    why: [
      say.t('why'),
      ...list.map((one) => say.t('why-each', { notch: say.notch(one), bed: say.gap(meanBedMm(one)) })),
    ],
    rules: ['trowel.naming', 'trowel.angle'],
  }),
});
