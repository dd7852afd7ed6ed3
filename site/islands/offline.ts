/** What the page has to say about the network and about editions. */
export type Notice = 'none' | 'offline' | 'update' | 'replaced';

interface Watch {
  /** Shows a notice; `act` does what its button says. */
  show: (notice: Notice, act?: () => void) => void;
  /** Called once the site is kept on this device. */
  ready: () => void;
  workerUrl: string;
}

/**
 * Keeps the site for use without a network and says how it stands. A new edition is never forced: it waits for the
 * reader's word, and only then is the page loaded again.
 */
export async function watchOffline({ show, ready, workerUrl }: Watch): Promise<void> {
  const tell = (): void => show(navigator.onLine ? 'none' : 'offline');
  addEventListener('online', tell);
  addEventListener('offline', tell);
  if (!navigator.onLine) tell();
  // Inside a learning platform's frame the platform keeps the course; a worker there would outlive it.
  if (!('serviceWorker' in navigator) || window.top !== window) return;

  let asked = false;
  const hadOne = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (asked) location.reload();
    else if (hadOne) show('replaced', () => location.reload());
    else ready();
  });

  if (hadOne) ready();

  const registration = await navigator.serviceWorker.register(workerUrl);
  const offer = (): void => {
    const { waiting } = registration;
    if (!waiting || !navigator.serviceWorker.controller) return;
    show('update', () => {
      asked = true;
      waiting.postMessage({ type: 'SKIP_WAITING' });
    });
  };
  offer();
  registration.addEventListener('updatefound', () => {
    const { installing } = registration;
    installing?.addEventListener('statechange', () => installing.state === 'installed' && offer());
  });
}
