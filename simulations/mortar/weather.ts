/** How weather changes open time; shares as the rules `time.weather` and `time.damp` give them. */
export interface WeatherShares {
  /** Degrees to a step. */
  stepK: number;
  /** What each warmer step leaves of open time. */
  warmer: number;
  breeze: number;
  wind: number;
  sun: number;
  /** Dry and damp air; left out where a caller knows nothing of the air. */
  dry?: number;
  damp?: number;
}

export interface Weather {
  temperatureC: number;
  wind: 'still' | 'breeze' | 'windy';
  sun: boolean;
  /** Damp of the air; middling when left out. */
  air?: 'dry' | 'middling' | 'damp';
}

/** Cold mortar stays open longer, but nobody should plan on much of it. */
const MOST_GAIN = 1.5;

/**
 * Minutes that combed mortar stays open in given weather.
 * @param sheetMin open time on the product's sheet, min, at the reference climate
 * @param referenceC temperature of that climate
 */
export function openMinutes(sheetMin: number, referenceC: number, weather: Weather, shares: WeatherShares): number {
  const steps = (weather.temperatureC - referenceC) / shares.stepK;
  const wind = { still: 1, breeze: shares.breeze, windy: shares.wind }[weather.wind];
  const air = { dry: shares.dry ?? 1, middling: 1, damp: shares.damp ?? 1 }[weather.air ?? 'middling'];
  return sheetMin * Math.min(MOST_GAIN, shares.warmer ** steps) * wind * (weather.sun ? shares.sun : 1) * air;
}

/** Tiles one setter may spread ahead for: as many as are set within the open time, one at the least. */
export const tilesAhead = (openMin: number, minPerTile: number): number =>
  Math.max(1, Math.floor(openMin / minPerTile + 1e-9));

/** How many times longer curing takes in the cold: twice for each step below the start. */
export const coldFactor = (temperatureC: number, fromC: number, stepK: number): number =>
  2 ** Math.max(0, (fromC - temperatureC) / stepK);
