/** Style sheets that could not be fetched: Vite asks for each only once, and shows its part without it from then on. */
const missing = new Set<HTMLLinkElement>();

/** Addresses of the style sheets that a part lacked when it could not be fetched, by what loads the part. */
const lackedBy = new Map<string, ReadonlySet<string>>();

/** Notes a style sheet that could not be fetched; for the errors of the window, while they are captured. */
export function noteMissing({ target }: Event): void {
  if (target instanceof HTMLLinkElement && target.rel === 'stylesheet') missing.add(target);
}

/**
 * Fetches a part of the page, after the style sheets that could not be fetched before. Those of other parts are
 * not waited for. A module that could not be fetched is asked for again by the browser itself.
 *
 * @throws what `load` throws, or an Error where a style sheet of the part still cannot be fetched
 * @example const { default: Sizes } = await fetched(() => import('../features/settings/Sizes.svelte'));
 */
export async function fetched<Part>(load: () => Promise<Part>): Promise<Part> {
  // Components make the function again each time; its text names the module that it imports.
  const name = String(load);
  const own = lackedBy.get(name);
  const [mine, others] = [true, false].map((isOwn) =>
    [...missing].filter(({ href }) => (own?.has(href) ?? false) === isOwn),
  ) as [HTMLLinkElement[], HTMLLinkElement[]];
  for (const link of others) fetchAgain(link).catch(() => undefined);
  if (mine.length > 0) await Promise.all(mine.map(fetchAgain));
  const before = addresses();
  try {
    const part = await load();
    lackedBy.delete(name);
    return part;
  } catch (error) {
    lackedBy.set(name, new Set([...(own ?? []), ...addresses().filter((href) => !before.includes(href))]));
    throw error;
  }
}

const addresses = (): string[] => [...missing].map(({ href }) => href);

function fetchAgain(failed: HTMLLinkElement): Promise<void> {
  missing.delete(failed);
  return new Promise((resolve, reject) => {
    const link = failed.cloneNode() as HTMLLinkElement;
    link.onload = () => resolve();
    link.onerror = () => {
      missing.add(link);
      reject(new Error(`Unable to preload CSS for ${link.href}`));
    };
    failed.replaceWith(link);
  });
}
