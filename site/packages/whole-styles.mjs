/**
 * Keeps the styles of every component that a page brings. A component shown only once the page runs (a tab, what was
 * read from storage) is dropped as unused from the copy that is rendered ahead, and the build would drop its styles with
 * it, which no other copy then brings.
 */
export const wholeStyles = () => ({
  name: 'whole-styles',
  moduleParsed({ meta }) {
    if (meta.vite) delete meta.vite.cssScopeTo;
  },
});
