/** Style sheets that could not be fetched: Vite asks for each only once, and shows its part without it from then on. */
const missing = new Set<HTMLLinkElement>();

/** Notes a style sheet that could not be fetched; for the errors of the window, while they are captured. */
export function noteMissing({ target }: Event): void {
  if (target instanceof HTMLLinkElement && target.rel === 'stylesheet') missing.add(target);
}

/**
 * Fetches a part of the page, after the style sheets that could not be fetched before. A module that could not be
 * fetched is asked for again by the browser itself.
 *
 * @throws what `load` throws, or an Error where a style sheet still cannot be fetched
 * @example const { default: Sizes } = await fetched(() => import('./dialogs/Sizes.svelte'));
 */
export async function fetched<Part>(load: () => Promise<Part>): Promise<Part> {
  if (missing.size > 0) {
    const links = [...missing];
    missing.clear();
    await Promise.all(links.map(fetchAgain));
  }
  return load();
}

function fetchAgain(failed: HTMLLinkElement): Promise<void> {
  return new Promise((resolve, reject) => {
    const link = failed.cloneNode() as HTMLLinkElement;
    link.onload = () => resolve();
    link.onerror = () => reject(new Error(`Unable to preload CSS for ${link.href}`));
    failed.replaceWith(link);
  });
}
