/** A number without needless digits: three figures that mean something. */
export const plainNumber = (value: number): string => {
  const size = Math.abs(value);
  const digits = size >= 100 ? 0 : size >= 10 ? 1 : size >= 1 ? 2 : 3;
  return String(Number(value.toFixed(digits)));
};
