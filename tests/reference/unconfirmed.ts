/**
 * Figures nobody has confirmed in print and documents nobody has seen. What they would look like if somebody wrote them
 * down after all: in a rule, in the plan's words, or on a page.
 */
export const UNCONFIRMED: readonly [what: string, sign: RegExp][] = [
  ['contact shares of BS 5385', /BS 5385(?:[^.|]|\.\d)*\d ?%|\d ?%(?:[^.|]|\.\d)*BS 5385/],
  ['values of AS 3958:2023', /AS 3958(\.1)?[:,] ?2023/],
  ['bed thickness and trowels of AS 3958', /AS 3958(?:[^.|]|\.\d)*(trowel|notch|thick)(?:[^.|]|\.\d)*\d ?(mm|in)\b/i],
  ['notch by edge of DIN 18157', /DIN 18157(?:[^.|]|\.\d)*notch|DIN 18157[^|]*1979/i],
  ['exterior contact of A108.20', /A108\.20/],
  ['a notch under a mat or sheet as guidance', /where the maker is silent, (\d|a thin bonded)/i],
  ['cover over heating cable', /(cover|embed)(?:[^.|]|\.\d)*cable(?:[^.|]|\.\d)*\d ?(mm|in)\b/i],
  [
    'rates for V, small and large slanted notches',
    /(1\/8 × 1\/8|3\/16 V|V notch|slanted)(?:[^.|]|\.\d)*\d+ ?ft² (a|per) bag/i,
  ],
  ['litres mixed from a North American bag', /\d(\.\d+)? ?(L|ft³|qt) (from|to|out of) (a|one) (50 lb|22\.7 kg) bag/],
  [
    'calibrated facial size, wedging, thickness of A137.1',
    /A137\.1(?:[^.|]|\.\d)*(wedging|thickness)|calibrated(?:[^.|]|\.\d)*facial size/i,
  ],
  ['sag and open-time numbers of A118', /A118(?:[^.|]|\.\d)*(\bsag|open time)(?:[^.|]|\.\d)*\d/i],
  ['sample sizes of ISO 10545-2', /10545-2(?:[^.|]|\.\d)*\d+ tiles/],
  ['drop count of EN 1015-3', /EN 1015-3/],
  ['load and angle of EN 12004-2', /EN 12004-2/],
  ['tables of NF DTU 52.2 and UNE 138002', /DTU 52\.2|UNE 138002/],
  ['rib depths of JIS A 5209', /JIS A 5209/],
];
