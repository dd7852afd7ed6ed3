/**
 * Exact flux of a Bingham paste between sliding plates, reduced: gap 1, yield stress 1, slide speed 1, viscosity U*.
 * Derived from the plane shear profile; the fluxes are what slide-table.ts rests on.
 */

const bisect = (f: (x: number) => number, low: number, high: number, times = 44): number => {
  let a = low;
  let b = high;
  for (let n = 0; n < times; n += 1) {
    const middle = 0.5 * (a + b);
    if (f(middle) < 0) a = middle;
    else b = middle;
  }
  return 0.5 * (a + b);
};

/** Net flux along the slide against a pressure gradient G: sheared all through, one layer and a plug, two layers. */
export function fluxAlongSlide(G: number, mu: number): number {
  if (G <= 2 * mu) return 0.5 - G / (12 * mu);
  const layer = Math.sqrt((2 * mu) / G);
  if (G * (1 - layer) <= 2) return layer / 3;
  const plug = 2 / G;
  const shift = (2 * mu) / (G * (1 - plug));
  const upper = 0.5 * (1 - plug + shift);
  const lower = 0.5 * (1 - plug - shift);
  const speed = (-G * lower * lower) / (2 * mu);
  return (-G * lower ** 3) / (3 * mu) + speed * (plug + upper) + (G * upper ** 3) / (6 * mu);
}

/** Flux down a gradient G at right angles to the slide; c is the shear stress across the gap along the slide. */
export function fluxAcrossSlide(G: number, mu: number): number {
  const half = 0.5;
  const inner = (c: number): number => (c >= 1 ? 0 : Math.sqrt(1 - c * c) / G);
  const speed = (c: number): number => {
    const z0 = inner(c);
    if (z0 >= half) return 0;
    return ((2 * c) / mu) * (half - z0 - (Math.asinh((G * half) / c) - Math.asinh((G * z0) / c)) / G);
  };
  const least = G * half >= 1 ? 1e-12 : Math.sqrt(1 - (G * half) ** 2);
  const c = bisect((x) => speed(x) - 1, least, 2 + mu + G * half);
  const moment = (z: number): number =>
    (z * Math.sqrt(c * c + (G * z) ** 2)) / (2 * G * G) - ((c * c) / (2 * G ** 3)) * Math.asinh((G * z) / c);
  const z0 = inner(c);
  return ((2 * G) / mu) * ((half ** 3 - z0 ** 3) / 3 - (moment(half) - moment(z0)));
}

/** 10-point Gauss–Legendre on 0…1, by Newton's method on the polynomial. */
const gauss = ((): [number, number][] => {
  const n = 10;
  return Array.from({ length: n }, (_, i) => {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let k = 0; k < 50; k += 1) {
      let before = 1;
      let now = x;
      for (let j = 2; j <= n; j += 1) [before, now] = [now, ((2 * j - 1) * x * now - (j - 1) * before) / j];
      slope = (n * (x * now - before)) / (x * x - 1);
      x -= now / slope;
    }
    return [(1 + x) / 2, 1 / ((1 - x * x) * slope * slope)];
  });
})();

/** Load over plastic load of a ridge of width 1 that widens R times the slide. */
export function exactSlideLoad(rate: number, mu: number, along: boolean): number {
  const gradient = (q: number): number =>
    along
      ? bisect((G) => fluxAcrossSlide(G, mu) - q, 1e-9, 1e3)
      : bisect((G) => 0.5 - fluxAlongSlide(G, mu) - q, 1e-9, 1e3);
  const panels = along ? 5 : 60;
  let sum = 0;
  for (let k = 0; k < panels; k += 1)
    for (const [at, weight] of gauss) {
      const x = (0.5 * (k + at)) / panels;
      sum += (weight * 0.5 * x * gradient(rate * x)) / panels;
    }
  return 4 * sum;
}
