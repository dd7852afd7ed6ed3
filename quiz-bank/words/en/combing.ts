import type { Words } from '../../engine/say.ts';

export const combing: Record<string, Words> = {
  'combing/comb-direction': {
    'story-0': '{tile} tile, laid with the long side {along}.',
    'story-1': 'You are about to comb for a {tile} tile. Its long side will lie {along}.',
    ask: 'How do you comb?',
    straight: 'Straight ridges, {way}',
    swirl: 'Half circles, so that it spreads evenly',
    either: 'Any way, as long as the tile is pressed hard',
    why: 'The ridges run {across}, along the short side: air in the middle has {half} to the edge instead of {long}.',
    picture: 'The tile over straight ridges along its short side.',
  },
  'combing/bare-strip': {
    story:
      'A helper keeps the mortar {bare} back from the line, so that none comes up in the joint: under a {tile} tile a strip that wide is bare along {edges}. Everything else beds perfectly.',
    'one-long': 'one long edge',
    'both-long': 'both long edges',
    'two-meeting': 'one long edge and one short edge',
    all: 'all four edges',
    ask: 'How much of the back can be bonded at best?',
    why: '{best} at the very best.',
    'why-edge':
      'And the number is not the worst of it: what is bare is the edge, where a heel or a wheel comes down. Spread to the line and clean the joint.',
  },
  'combing/lowest-angle': {
    story:
      'The job needs a bed of at least {need} once the ridges are flat. You comb with a {notch} trowel, and toward evening the blade sinks.',
    ask: 'How low may it sink? Pick the lowest angle to the floor that still leaves enough.',
    picture: 'The blade of a {notch} trowel, to scale.',
    why: 'At {angle}° it leaves {bed}.',
  },
  'combing/what-to-change': {
    story: 'The picture shows the combed bed from above, with the place of one {tile} tile drawn over it.',
    ask: 'What do you change before the tile goes down?',
    leave: 'Nothing, set it',
    turn: 'Comb it the other way',
    straighten: 'Comb it again in straight lines',
    'one-way': 'Comb it again, one direction only',
    'picture-good': 'Straight ridges that run along the short side of the tile.',
    'picture-turned': 'Straight ridges that run along the long side of the tile.',
    'picture-swirled': 'Ridges in circles under the tile.',
    'picture-crossed': 'Ridges combed both ways, crossing at right angles.',
    'why-good': 'Straight, and along the short side: the air has the short way out. Set it.',
    'why-turned':
      'The ridges are straight but run the long way, so the air in the middle has the long way out. Turn them.',
    'why-swirled': 'Circles close on themselves: the air inside has no way out at all.',
    'why-crossed': 'The second pass cuts the first into blocks and closes its valleys. One direction, once.',
  },
  'combing/which-patches-pass': {
    story: 'Helpers have combed for {tile} tile that will lie with its long side {along}.',
    ask: 'On whose patch would you set?',
    'comb-0': 'Keyed in flat, then straight ridges {way}, right up to the line; the finger comes away wet',
    'comb-1': 'Sharp straight ridges {way}, a bit over the line, combed a minute ago on a scraped-in coat',
    'comb-2': 'A scraped-in coat, straight ridges {way} on top, up to the line, all of it still wet',
    swirl: 'Keyed in, up to the line, fresh, combed in neat half circles all over',
    bare: 'Straight fresh ridges {way}, kept a thumb’s width back from the line, the tile’s back coated instead',
    skin: 'Straight ridges {way}, up to the line, good to look at; the finger comes away clean',
    'why-turned': 'Ridges {way} run the long way of the tile: the air has the long way out.',
    'why-swirl': 'Half circles trap the air.',
    'why-bare': 'A bare strip at the line is an edge with nothing under it, whatever is on the back of the tile.',
    'why-skin': 'A clean finger is a skin: scrape it off.',
  },
};
