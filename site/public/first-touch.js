// A live part of a page is on show before its script has arrived. What is clicked or typed there in the meantime is
// kept and done again when the part answers, so that no button is dead and nothing typed is lost. An outside file: the
// content policy allows no script inside the page.
(() => {
  const WAITING = 'astro-island[ssr]';
  const TICKS = '[type=checkbox], [type=radio]';
  const fields = new Map();
  const folds = new Map();
  let pressed = null;
  const waiting = (target) => (target instanceof Element ? target.closest(WAITING) : null);

  const press = (event) => {
    const control =
      event.target instanceof Element ? event.target.closest('button, [type=submit], [type=button]') : null;
    const island = waiting(control);
    if (!island) return;
    // A field takes the focus or a tick as ever; whatever acts waits, and so does a form, which would load the page anew.
    event.preventDefault();
    pressed = control;
    island.setAttribute('aria-busy', 'true');
  };
  // A fold opens as ever; the part's own idea of it would shut it again.
  const turn = ({ target }) => {
    const fold = target instanceof Element ? target.closest('summary')?.parentElement : null;
    if (fold && waiting(fold)) folds.set(fold, !fold.open);
  };

  addEventListener('click', press, true);
  addEventListener('click', turn, true);
  addEventListener('submit', (event) => waiting(event.target) && event.preventDefault(), true);
  for (const kind of ['input', 'change'])
    addEventListener(
      kind,
      ({ target }) => {
        if (waiting(target) && 'value' in target)
          fields.set(target, target.matches(TICKS) ? target.checked : target.value);
      },
      true,
    );

  addEventListener(
    'astro:hydrate',
    ({ target }) => {
      target.removeAttribute('aria-busy');
      for (const [field, value] of fields) {
        if (!target.contains(field)) continue;
        fields.delete(field);
        if (field.matches(TICKS)) {
          field.checked = !value;
          field.click();
          continue;
        }
        field.value = value;
        for (const kind of ['input', 'change']) field.dispatchEvent(new Event(kind, { bubbles: true }));
      }
      for (const [fold, open] of folds) {
        if (!target.contains(fold)) continue;
        folds.delete(fold);
        fold.open = open;
      }
      const again = pressed;
      if (!again || !target.contains(again)) return;
      pressed = null;
      again.click();
    },
    true,
  );
})();
