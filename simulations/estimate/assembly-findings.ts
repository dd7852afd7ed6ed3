import type { UnitSystem } from '../units/format.ts';
import { valueOf } from '../rules/rulebook.ts';
import type { Area } from './job-types.ts';
import type { Finding, Layer } from './plan-types.ts';
import { finding, lengthValue, ruleFinding, type Speaker, valueIn } from './say-finding.ts';
import { isOutdoor, isWet } from './tile-facts.ts';
import { words } from './words/en.ts';

/** What the build-up under the tile, and the tile's own kind, ask for. */
export function assemblyFindings(area: Area, layers: readonly Layer[], say: Speaker, units: UnitSystem): Finding[] {
  const { tile, membrane } = area;
  const note = (rule: Parameters<typeof ruleFinding>[0]) => ruleFinding(rule, 'note', units);
  const found: Finding[] = [];
  const outdoorFloor = area.exposure === 'exterior' && area.surface === 'floor';
  if (outdoorFloor && (area.overRoom || area.substrate === 'plywood'))
    found.push(ruleFinding('exterior.gate', 'stop', units));
  if (isOutdoor(area)) found.push(note('exterior.frost'));
  if (membrane !== 'none') found.push(note('membrane.maker'));
  const sheet = layers.find((layer) => layer.name === 'under-sheet' || layer.name === 'under-mat');
  if (sheet?.notch)
    found.push(
      finding('membrane.bond', 'note', say(words.membraneSilent, { bed: lengthValue(sheet.thicknessMm, 'gap') })),
    );
  const board = layers.find((layer) => layer.name === 'under-board');
  if (board?.notch)
    found.push(
      finding('board.bed', 'note', say(words.boardBed, { notch: board.notch.label })),
      note('board.fasteners'),
    );
  if (membrane === 'liquid-waterproofing') found.push(note('membrane.liquid'));
  if (membrane === 'uncoupling-mat') found.push(note('mat.cavities'));
  if (membrane === 'heated-mat') found.push(note('mat.heated-volume'));
  if (area.substrate === 'plywood') found.push(note('substrate.stiffness'));
  if (area.substrate === 'plywood' && membrane === 'none') found.push(note('class.a118-11'));
  if (area.substrate === 'concrete' || area.substrate === 'screed')
    found.push(note('substrate.concrete-age'), note('substrate.dampen'));
  if (area.surface === 'wall') found.push(note('class.t'));
  if (tile.material === 'glass') found.push(note('glass.mortar'), note('glass.flatten'));
  if (tile.light && tile.material === 'stone')
    found.push(note('stone.white'), ...(isWet(area) ? [ruleFinding('stone.wet-marble', 'warn', units)] : []));
  if (tile.moistureSensitive) found.push(ruleFinding('stone.epoxy', 'warn', units));
  if (tile.reliefMm > valueOf('substrate.keyed-tile', 'depth'))
    found.push(
      finding('substrate.keyed-tile', 'stop', say(words.deepKeys, { relief: lengthValue(tile.reliefMm, 'gap') })),
    );
  else if (tile.reliefMm > 0)
    found.push(finding('bed.relief', 'note', say(words.relief, { litres: valueIn(tile.reliefMm, 'L') })));
  return found;
}
