/** True when every two of the values differ by more than `share` of the larger: no second answer comes near the right one. */
export function apart(values: readonly number[], share: number): boolean {
  return values.every((value, at) =>
    values.every(
      (other, place) => place >= at || Math.abs(value - other) > share * Math.max(Math.abs(value), Math.abs(other)),
    ),
  );
}
