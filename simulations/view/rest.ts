/** How long the page goes on before the work is taken up again, ms. */
const REST_MS = 2;

/** Lets the page go on for a moment in a piece of long work. */
export const rest = (): Promise<void> => new Promise((done) => setTimeout(done, REST_MS));
