import type { Words } from '../../engine/say.ts';

export const timeAndWeather: Record<string, Words> = {
  'time-and-weather/spread-ahead': {
    story:
      'The bed stays open {open} today. The batch in the bucket lasts {pot}. With levelling and cleaning you need {pace} a tile.',
    ask: 'For how many tiles do you comb at once?',
    why: '{open} over {pace} makes {tiles}, rounded down. The bucket’s time has nothing to do with it.',
    'why-one':
      'At {pace} min a tile not even one fits in {open} min. Comb for one and work faster, or look for a mortar that stays open longer.',
  },
  'time-and-weather/open-today': {
    story:
      'The sheet gives an open time of {sheet} at {temperature} in still air, and a pot life of {pot}. It is {temperature} today.',
    'sky-still-sun': 'The air is still. The sun lies on the bed.',
    'sky-still-shade': 'The air is still and the bed is in the shade.',
    'sky-breeze-sun': 'There is a breeze, and the sun lies on the bed.',
    'sky-breeze-shade': 'There is a breeze; the bed is in the shade.',
    'sky-windy-sun': 'It is windy, and the sun lies on the bed.',
    'sky-windy-shade': 'It is windy; the bed is in the shade.',
    breeze: 'A breeze leaves of the open time',
    wind: 'Wind leaves',
    sun: 'Sun on the bed leaves',
    ask: 'How long does the bed stay open?',
    why: 'Each share is taken of what the one before left: {value}. A rule of thumb: the finger has the last word.',
  },
  'time-and-weather/shortest-first': {
    story: 'The same mortar is combed in four places.',
    ask: 'Put them in order: where does the bed skin first?',
    first: 'skins first',
    last: 'stays open longest',
    day: '{temperature}, {wind}, {sky}',
    still: 'still air',
    breeze: 'a breeze',
    windy: 'wind',
    sun: 'sun on the bed',
    shade: 'shade',
    why: 'Heat, moving air and sun each take their share. By the rule of thumb:',
    'why-each': '{temperature}, {wind}, {sky}: {open}.',
  },
  'time-and-weather/cure-in-the-cold': {
    story:
      'The sheet says: no foot on it for {hours} hours at {from}. The slab and the room are at {now}. Curing takes twice as long for each {step} colder.',
    ask: 'How long do you keep people off?',
    why: '{times} times as long: {value}.',
  },
  'time-and-weather/still-good': {
    story: 'You combed {age} ago; the sheet gives {open}. The ridges {looks}. You touch one: {finger}.',
    shiny: 'shine',
    dull: 'look a little dull',
    wet: 'mortar comes away on the finger',
    clean: 'the finger comes away clean',
    ask: 'Do you set on it? And why?',
    yes: 'Set on it',
    no: 'Scrape it off',
    'reason-wet': 'It still wets what it touches',
    'reason-clean': 'It has skinned over',
    'reason-clock': 'By the clock there is still time left for it',
    'reason-looks': 'By its looks it is as good as it was',
    'reason-water': 'A damp sponge makes it good again',
    'reason-press': 'Pressing hard breaks any skin',
    'why-wet': 'A wet finger is the test that counts.',
    'why-clean':
      'A clean finger is a skin, whatever clock and looks say. Pressing leaves the skin where it is, between bed and tile.',
  },
};
