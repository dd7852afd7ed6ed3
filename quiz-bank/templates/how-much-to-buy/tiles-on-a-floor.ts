import { template } from '../../engine/template.ts';
import { even, oblong } from '../../jobs/tiles.ts';

/** How many tiles a floor has, and what share of them sounds wrong. */
export const tilesOnAFloor = template({
  id: 'how-much-to-buy/tiles-on-a-floor',
  outcomes: ['every-layer', 'how-many-to-lift'],
  ideas: [],
  draw: (draw) => {
    const tile = draw.stock([...even.slice(2), ...oblong.slice(0, 4)]);
    const areaM2 = draw.floor(draw.step(10, 70, 2));
    const tiles = (areaM2 * 1e6) / (tile.lengthMm * tile.widthMm);
    const hollow = draw.whole(3, 40);
    return tiles < 40 || hollow > 0.4 * tiles ? null : { tile, areaM2, tiles, hollow };
  },
  pose: ({ tile, areaM2, tiles, hollow }, say) => ({
    story: [say.t('story', { area: say.area(areaM2), tile: say.tile(tile.lengthMm, tile.widthMm), hollow })],
    ask: say.t('ask'),
    answer: { kind: 'number', quantity: 'share', value: hollow / tiles, tolerance: 0.01, digits: 0, ideas: [] },
    why: [say.t('why', { tiles: Math.round(tiles), hollow, share: say.share(hollow / tiles) })],
    rules: ['sampling.sound', 'sampling.tiles'],
  }),
});
