/** What a person is told of versions of the page. */
export interface Versions {
  /** A newer version is stored, and comes once no window of this one is open. */
  newerIsReady(): void;
  /** This is another version than the one used last. */
  isNewer(): void;
}

const usedLast = 'easewright version';
const hour = 3_600_000;

/**
 * Stores the page on the device, so that it works without a network from the next visit on, and looks for newer versions
 * of it.
 *
 * @param worker the address of the worker that does it
 * @param version a text that is another in each version
 */
export async function workOffline(worker: string, version: string, versions: Versions): Promise<void> {
  try {
    const before = localStorage.getItem(usedLast);
    if (before !== null && before !== version) versions.isNewer();
    localStorage.setItem(usedLast, version);
  } catch {
    // Where the browser keeps nothing there is no version before.
  }
  // Browsers have no such workers where the connection is not secure, nor in some private windows.
  const registration = await navigator.serviceWorker
    ?.register(worker, { updateViaCache: 'none' })
    .catch(() => undefined);
  if (!registration) return;

  const check = (): void => {
    if (registration.waiting && navigator.serviceWorker.controller) versions.newerIsReady();
  };
  check();
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', check);
  });
  let lookedAt = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || Date.now() - lookedAt < hour) return;
    lookedAt = Date.now();
    registration.update().catch(() => {});
  });
}
