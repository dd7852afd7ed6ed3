// Applied before the first paint, so that a page never flashes in the wrong units or light. An outside file: the
// content policy allows no script inside the page. `site/storage/preferences.ts` owns the values afterwards.
(() => {
  const root = document.documentElement;
  const kept = (key) => {
    try {
      return localStorage.getItem(key);
    } catch {
      return null; // storage is closed in this browser: the page's own defaults stand
    }
  };
  const units = kept('rtb.units');
  root.dataset.units = units === 'metric' ? 'metric' : 'imperial';
  const theme = kept('rtb.theme');
  const dark = theme === 'dark' || (theme !== 'light' && matchMedia('(prefers-color-scheme: dark)').matches);
  root.dataset.theme = dark ? 'dark' : 'light';

  // A projector's profile comes by link (?wall) and lasts as long as the tab.
  const asked = new URLSearchParams(location.search).get('wall');
  try {
    if (asked !== null) sessionStorage.setItem('rtb.wall', asked === 'off' ? 'off' : 'on');
    if (sessionStorage.getItem('rtb.wall') === 'on') root.dataset.wall = '';
  } catch {
    if (asked !== null && asked !== 'off') root.dataset.wall = '';
  }
})();
