import { coldFactor, openMinutes, tilesAhead, type Weather, type WeatherShares } from '@sim/mortar/weather.ts';

/** What the rules say about time. Temperatures °C. */
export interface ClockRules {
  shares: WeatherShares;
  referenceC: number;
  leastC: number;
  mostC: number;
  coldFromC: number;
  coldStepK: number;
}

export interface ClockReading {
  openMin: number;
  tiles: number;
  /** How many times as long the cure takes as on a mild day. */
  cureTimes: number;
  /** What warmth or cold, moving air and sun each leave of the bag's minutes. */
  parts: { heat: number; air: number; sun: number };
  warning: 'cold' | 'hot' | 'one' | 'go';
}

/** Open time in given weather, and what follows for the work. */
export function readClock(sheetMin: number, weather: Weather, minPerTile: number, rules: ClockRules): ClockReading {
  const { shares, referenceC } = rules;
  const minutes = (of: Weather): number => openMinutes(1, referenceC, of, shares);
  const calm = { temperatureC: referenceC, wind: 'still', sun: false } as const;
  const openMin = openMinutes(sheetMin, referenceC, weather, shares);
  const tiles = tilesAhead(openMin, minPerTile);
  const { temperatureC } = weather;
  return {
    openMin,
    tiles,
    cureTimes: coldFactor(temperatureC, rules.coldFromC, rules.coldStepK),
    parts: {
      heat: minutes({ ...calm, temperatureC }),
      air: minutes({ ...calm, wind: weather.wind }),
      sun: minutes({ ...calm, sun: weather.sun }),
    },
    warning: temperatureC < rules.leastC ? 'cold' : temperatureC > rules.mostC ? 'hot' : tiles === 1 ? 'one' : 'go',
  };
}

/** A wedge of a clock face of 60 minutes, from twelve o'clock, as a path about (0, 0); a whole hour or more is a disc. */
export function wedge(minutes: number, radius: number): string {
  const turn = Math.min(0.9999, Math.max(0, minutes / 60)) * 2 * Math.PI;
  const x = (radius * Math.sin(turn)).toFixed(2);
  const y = (-radius * Math.cos(turn)).toFixed(2);
  return `M0 0V${-radius}A${radius} ${radius} 0 ${turn > Math.PI ? 1 : 0} 1 ${x} ${y}z`;
}
