/** A path of this site under whatever folder it is served from. */
export const href = (path: string): string => `${import.meta.env.BASE_URL.replace(/\/$/, '')}${path}`;

/** Whether `path` is the page (or a parent of the page) that is being shown. */
export function isCurrent(path: string, pathname: string): boolean {
  const target = href(path);
  return path === '/' ? pathname === target : pathname.startsWith(target);
}
