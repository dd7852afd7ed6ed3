/** What the job sheet says, in English; `{name}` stands for a measure or a word. */
export const words = {
  notchPick:
    'A {notch} leaves {bed} at a {angle} blade; this tile on this floor takes {need}: {sand} for the sand, {warp} for bow, {floor} for the floor{relief}.',
  notchMosaic:
    'A {notch} leaves {bed} at a {angle} blade, enough for the least bed of {least} and not enough to fill the joints.',
  reliefPart: ', {relief} for the back’s relief',
  notchMaker: 'The maker’s written instruction asks for a {notch}; it takes the place of our choice, {ours}.',
  notchMakerSame: 'The maker’s written instruction asks for a {notch}, as we would.',
  notchMakerThin:
    'The maker’s notch, a {notch}, leaves {bed} where we reckon {need}: lift tiles early, and ask the maker if coverage falls short.',
  notchMakerTooThin:
    'The maker’s notch, a {notch}, leaves at most {bed} even upright, under the least bed of {least}; ask the maker before beginning.',
  notchNone: 'None of the trowels at hand will do; a {notch} comes nearest. {why}',
  notchAmple:
    'A {notch} leaves more than this tile takes; nothing smaller at hand reaches {need}, so mind the squeeze-up.',
  refusals: {
    'too-thin-upright': 'Leaves at most {found} even upright, under the least bed of {limit}.',
    'too-thin-for-95':
      'Leaves {found} at {steep}, under the least bed of {limit}; an upright blade is not to be counted on.',
    'too-little': 'Leaves {found} at {usual}; tile and floor take {limit}.',
    'too-thick': 'Leaves {found}, over the mortar’s limit of {limit}.',
    'joint-fills':
      'Pressed to the least bed, mortar would rise {found} in the joint, over the {limit} that leaves room for grout.',
    'must-collapse':
      'Would need {found} of sliding, and this tile can’t be slid; a slanted notch closes up with far less.',
    'not-needed': 'Leaves {found} where {limit} is taken; the rest only comes up in the joints.',
  },
  combShort: 'Key in with the flat side, then comb straight, ridges parallel to the short side, the blade {held}.',
  combSquare: 'Key in with the flat side, then comb straight in one direction, the blade {held}.',
  combCable: 'Fill over the cable, then comb straight along the cable runs with a plastic tool, the blade {held}.',
  butterNone: 'No back coat is called for; lift a tile early and add one where coverage falls short.',
  butterFlat: 'Butter the back with the flat side: a thin coat pressed in, just before the tile is set.',
  butterCombed: 'Comb the back too, its ridges parallel to those on the floor, just before the tile is placed.',
  butterMosaic: 'A mosaic sheet is not buttered; the levelled bed must be full by itself.',
  methods: {
    slide: 'Press, move {travel} across the ridges and back until they collapse, and end in place.',
    'beat-in': 'Lay the sheet, then beat it in with a block or float until no ridge line is left.',
    collapse:
      'Press, and shake the tile with cups or a vibrating tool: the slanted ridges fall over with no stroke. Let the tile go aside the way they lean, by about as much as it sinks (model).',
    'walk-in': 'Walk the panel in along its centre line, then in short steps outwards; vibrate its whole edge.',
    vibrate: 'Vibrate the panel and beat it in with a weighted paddle, its whole edge too.',
  },
  narrowJoint:
    'The joint of {joint} leaves less room than the {travel} of travel: lay the tile off its place and slide it in.',
  mortar: {
    'thin-set': 'An ordinary thin-set mortar; its bed is at most {most} after embedding.',
    'large-and-heavy': 'A large-and-heavy-tile mortar; its bed is at most {most} after embedding.',
    epoxy: 'A two-part epoxy setting bed: this stone moves or stains with water.',
  },
  mortarWhite: ' White, or it shows through.',
  mortarGlass: ' White and made for glass.',
  mortarMaker: 'The maker’s written instruction asks for {kind} mortar; it takes the place of our choice, {ours}.',
  kinds: { 'thin-set': 'thin-set', 'large-and-heavy': 'large-and-heavy-tile', epoxy: 'epoxy' },
  thickBed:
    'The bed would be {bed}, over the {most} this mortar may have: take a smaller notch, or a mortar for a thicker bed.',
  makerCoverageRaised:
    'The maker’s written instruction asks for {maker}, more than the {ours} of the standard, and stands.',
  makerCoverageRefused:
    'The maker’s written {maker} is below the least of {ours} for this place; the sheet keeps {ours}. A laxer figure needs the specifier’s word.',
  jointTooNarrow: 'The joint of {joint} is under the least of {least}.',
  jointMeasure:
    'In running bond the longest edge’s warp is added to the joint: measure these tiles; the standard lets them have {warp}.',
  offsetTooMuch:
    'An offset of {offset} is over the {most} for tile this long ({length} of it at most) unless a mock-up is approved.',
  lippageOver:
    'The bow alone may show {expected} of lippage, over the {most} allowed; measure the tiles, turn the bowed ones, or offset less.',
  lippageUnmeasured:
    'Nobody measured the bow: expected lippage is for the greatest the standard allows, and what is measured is added to the limit.',
  lippageBoundary:
    'At a joint of exactly {joint} one reading allows {narrow}, four others {wide}, each and the warpage.',
  flatnessOk: 'The floor is to be within {dip} in {over}{short}; as measured it is.',
  flatnessUnknown:
    'The floor is to be within {dip} in {over}{short}; nobody has measured it, so lay a straightedge first.',
  flatnessNot:
    'The floor is {found} out in {foundOver} where {allowed} is allowed: grind the high places and fill up to {patch} with patch or leveller, let it cure, then set. Mortar is no leveller.',
  flatnessShort: ' and {dip} in {over}',
  flatnessShrink:
    'A dip filled with setting mortar would make a bed of {bed}, over the {most} it may have, and the tile would sink as it shrinks.',
  bedShape: 'Mean bed {bed}.',
  bagsWhy:
    'The bag’s headline comes to {label} for this notch: it reckons with a thin flattened bed and no waste, while at {angle} this trowel leaves {bed}{layers}, and {waste} goes to waste.',
  bagsWhyLayers: ', other layers come on top',
  bagsShort: 'Bags at hand: {have}; at least {low} are needed.',
  bagsBothLayers: 'Count every layer: {layers}.',
  batches: 'Mix {powder} of powder with {water} of water at a time, {count} in all, each used within {pot}.',
  batchesLast: ' The last takes {powder} and {water}.',
  spread:
    'Combed mortar stays open about {open} here: spread for {tiles} {pieces} at {pace} each, and touch the ridges before each one.',
  spreadOne: 'Combed mortar stays open about {open} here and one piece takes {pace}: spread for one at a time.',
  pieces: { tile: 'tiles', sheet: 'sheets' },
  upright: 'upright',
  orSteeper: 'at {angle} or steeper',
  tooCold: 'At {temperature} it is outside the {least} to {most} that mortar is made for; follow the bag, or wait.',
  cold: 'At {temperature} the mortar takes about {times} times as long to cure as at {from}: wait before walking on it or grouting.',
  movement:
    'Movement joints every {least} to {most}, at the perimeter, at changes of plane and over joints in the base.',
  wallHeavy: 'Tile and mortar weigh {weight} and this wall carries {limit}.',
  wallFine: 'Tile and mortar weigh {weight}; this wall carries {limit}.',
  pull: 'Lift at least {tiles} tiles while the mortar is fresh, corners and edges looked at too. {tiles} good tiles out of {tiles} still leave up to {bad} of the floor possibly bad (19 chances in 20){more}.',
  pullMore: '; {tiles} good ones bring that to {bad}',
  pullAll: 'There are only {tiles} tiles: lift each one you can.',
  honest: 'The predicted coverage is a model’s figure, not a measurement: lift a tile and look.',
  lowChance:
    'The model sees {chance} of tiles reaching {need}: mind blade, strokes and time, take a deeper notch or comb the back too, and lift the first tiles.',
  lowChanceMosaic:
    'The model sees {chance} of sheets reaching {need}: level the ridges well, set while the bed is wet, beat in every piece, and lift the first sheets.',
  doneSwirled: 'It is combed in swirls: comb straight, one way, so that the air gets out along the lanes.',
  doneLight: 'It is laid with a light hand: the ridges stay standing under most of the tile.',
  untoldPush: 'How hard the tile is pressed is not said: a light hand is taken. Say it if it is leaned on.',
  untoldMove:
    'How far the tile is moved is not said: it is taken to be only pressed, for swirls have no way across them. Say it if it is moved.',
  doneMoved: 'The tile is moved {move} where {travel} across the ridges is asked for.',
  donePressed: 'The tile is only pressed where {travel} of movement across the ridges is asked for.',
  doneBare: 'The back coat that this sheet asks for is left out.',
  done: 'Done like that the model sees {done} in the middle of its draws; done as this sheet says, {planned}.',
  deepKeys: 'Relief of {relief} is a keyed back: this is no thin-bed tile.',
  relief: 'The back’s relief takes {litres} of mortar from each square metre; fill it with the flat side first.',
  slope: 'Over {run} the floor falls by at least {fall}.',
  liftBag:
    'A {bag} bag lifted from the floor is over the {limit} the lifting equation allows there: two people, half bags, or bags stood at hip height.',
  liftBagFine:
    'A {bag} bag lifted from the floor is within the {limit} the lifting equation allows there; keep it close.',
  panelLift: 'This tile weighs {weight}: plan the way, and lift with two or more.',
  membraneSilent:
    'How it is bedded, its maker says; where nothing is said, ask. Until then the mortar under it is counted as a bed of {bed}.',
  boardBed: 'The board lies in its own bed of fresh mortar, {notch}, and is fastened through it.',
  layerNames: {
    'under-board': 'under the board',
    'under-sheet': 'under the sheet',
    'under-mat': 'under the mat',
    cavities: 'in the mat’s cavities',
    'over-cable': 'over the cable',
    bed: 'tile bed',
    'back-coat': 'back coat',
  },
  outcomes: {
    decides: '{rule} decides, at {value}.',
    agrees: '{rule} says the same.',
    'less-strict': '{rule} asks for {value}, which is less strict.',
    'does-not-apply': '{rule} does not speak of this job.',
    'other-standards': '{rule} belongs to another set of standards.',
    overridden: '{rule} asked for {value}; the maker’s instruction is stricter.',
  },
} as const;
