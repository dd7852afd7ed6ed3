import { openMinutes, tilesAhead, type Weather, type WeatherShares } from '@sim/mortar/weather.ts';
import { valueOf } from '@sim/rules/rulebook.ts';

/** Shares and the reference climate as the rules give them. */
export const weatherShares = (): WeatherShares => ({
  stepK: valueOf('time.weather', 'step'),
  warmer: valueOf('time.weather', 'warmer'),
  breeze: valueOf('time.weather', 'breeze'),
  wind: valueOf('time.weather', 'wind'),
  sun: valueOf('time.weather', 'sun'),
});
export const referenceC = (): number => valueOf('time.reference', 'temperature');

const sheetMin = valueOf('class.open', 'extended');
const minPerTile = 2;
const roof: Weather = { temperatureC: 33, wind: 'breeze', sun: true };
const shares = weatherShares();
const openMin = openMinutes(sheetMin, referenceC(), roof, shares);
const stepsWarmer = (roof.temperatureC - referenceC()) / shares.stepK;
const heatShare = shares.warmer ** stepsWarmer;
const shaded = openMinutes(sheetMin, referenceC(), { ...roof, wind: 'still', sun: false }, shares);

/** A hot roof: the open time left, and the tiles to spread for. */
export const clockWorked = {
  sheetMin,
  minPerTile,
  temperatureC: roof.temperatureC,
  stepsWarmer,
  heatShare,
  breeze: shares.breeze,
  sun: shares.sun,
  allShare: openMin / sheetMin,
  openMin,
  /** A minute begun is no minute to work in. */
  wholeMin: Math.floor(openMin),
  tiles: tilesAhead(openMin, minPerTile),
  tilesShaded: tilesAhead(shaded, minPerTile),
};
