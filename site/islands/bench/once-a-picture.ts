/** Things done at most once with each picture of the page. */
export interface OnceAPicture {
  /** Does something at once; of what comes before the page's next picture, the last is done with that one. */
  do: (act: () => void) => void;
  /** Forgets what waits. */
  drop: () => void;
}

/** Beds come quicker than pictures, and what no picture shows is work for nothing. */
export function onceAPicture(): OnceAPicture {
  let waiting: (() => void) | null = null;
  let asked = false;
  const run = (act: () => void): void => {
    asked = true;
    requestAnimationFrame(() => {
      asked = false;
      const next = waiting;
      waiting = null;
      if (next) run(next);
    });
    act();
  };
  return {
    do: (act) => {
      if (asked) waiting = act;
      else run(act);
    },
    drop: () => {
      waiting = null;
    },
  };
}
