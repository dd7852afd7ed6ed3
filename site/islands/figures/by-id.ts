/** The entry of that id. @throws when there is none: a page that offers it doesn't build */
export function byId<T extends { id: string }>(list: readonly T[], id: string): T {
  const found = list.find((one) => one.id === id);
  if (!found) throw new Error(`There is no "${id}" among ${list.map((one) => one.id).join(', ')}.`);
  return found;
}
