import { cellName } from '../../engine/letters.ts';
import { template } from '../../engine/template.ts';
import { pullPicture } from '../../jobs/pull-picture.ts';
import { RULED } from '../../jobs/ruled.ts';
import { BASES, mirrored, shelfRun } from '../../runs/shelf.ts';

/** Less than this can't be told from a stripe on a small picture, mm². */
const LEAST_POCKET = 330;

/** A tile pulled from a swirled bed: mark where air was shut in. */
export const whereTheAirWas = template({
  id: 'what-the-ridges-are-for/where-the-air-was',
  outcomes: ['where-air-goes', 'straight-one-way'],
  ideas: [],
  draw: (draw) => {
    const run = mirrored(shelfRun(draw.whole(0, BASES - 1), 'swirl'), draw.chance(0.5), draw.chance(0.5));
    if (!run.pocket || run.pocket.areaMm2 < LEAST_POCKET) return null;
    const { lengthMm, widthMm } = run.job;
    const reach = 0.7 * Math.sqrt(run.pocket.areaMm2 / Math.PI);
    const squareOf = (x: number, y: number) =>
      cellName(
        Math.min(RULED.across - 1, Math.max(0, Math.floor((x / lengthMm + 0.5) * RULED.across))),
        Math.min(RULED.down - 1, Math.max(0, Math.floor((y / widthMm + 0.5) * RULED.down))),
      );
    const { xMm, yMm } = run.pocket;
    const right = [
      squareOf(xMm, yMm),
      ...[
        [reach, 0],
        [-reach, 0],
        [0, reach],
        [0, -reach],
      ].map(([dx = 0, dy = 0]) => squareOf(xMm + dx, yMm + dy)),
    ];
    return { run, right: [...new Set(right)] };
  },
  pose: ({ run, right }, say) => ({
    story: [say.t('story', { tile: say.tile(run.job.lengthMm, run.job.widthMm), notch: say.notch(run.job.trowel) })],
    ask: say.t('ask'),
    picture: pullPicture(run, say, true),
    answer: { kind: 'mark', columns: RULED.across, rows: RULED.down, right, ideas: [] },
    why: [
      say.t('why', {
        cells: right.join(', '),
        area:
          say.units === 'imperial'
            ? `${((run.pocket?.areaMm2 ?? 0) / 645.16).toFixed(1)} in²`
            : `${run.pocket?.areaMm2 ?? 0} mm²`,
      }),
    ],
    rules: ['comb.straight', 'void.support'],
  }),
});
