import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it, vi } from 'vitest';
import Fetched from '../../src/ui/Fetched.svelte';
import { noteMissing } from '../../src/workspace/fetching';
import PlotSheet from '../../src/features/pictures/PlotSheet.svelte';
import FunctionList from '../../src/features/formula-editor/FunctionList.svelte';

type Part = { default: typeof FunctionList };

/** What cannot be fetched so often, and then can. */
function missing<Loaded>(times: number, part: Loaded) {
  let wanted = 0;
  return vi.fn(async (): Promise<Loaded> => {
    if (wanted++ < times) throw new TypeError('Failed to fetch dynamically imported module');
    return part;
  });
}

describe('a part of the page that could not be fetched', () => {
  const given = { insert: () => {} };
  const alert = () => screen.findByRole('alert');
  const again = () => screen.findByRole('button', { name: 'try again' });

  it('is said, and fetched once more as often as a person asks, until it is there', async () => {
    const user = userEvent.setup();
    const load = missing(2, { default: FunctionList } satisfies Part);
    render(Fetched<{ insert: (put: string) => void }>, { load, given });
    expect((await alert()).textContent).toMatch(/could not be fetched\. Is there a network\?/);
    await user.click(await again());
    await vi.waitFor(() => expect(load).toHaveBeenCalledTimes(2));
    await user.click(await again());
    await vi.waitFor(() => expect(screen.queryByRole('alert')).toBeNull());
    expect(load).toHaveBeenCalledTimes(3);
    expect(document.body.textContent).toContain('ROUNDCOUNT');
  });

  /** A style sheet that is missing, and what is asked for in its place: nothing loads where nothing is drawn. */
  function sheet(href: string) {
    const links: HTMLLinkElement[] = [];
    const catching = (one: HTMLLinkElement): HTMLLinkElement =>
      Object.assign(one, {
        replaceWith(other: HTMLLinkElement) {
          links.push(catching(other));
        },
      });
    const link = catching(Object.assign(document.createElement('link'), { rel: 'stylesheet', href }));
    return { links, fail: () => noteMissing({ target: link } as unknown as Event) };
  }

  it('is fetched after its style sheet that was missing', async () => {
    const user = userEvent.setup();
    const { links, fail } = sheet('/part.css');
    const load = vi.fn(async (): Promise<Part> => ({ default: FunctionList }));
    const first = (): void => {
      fail();
      throw new Error('Unable to preload CSS for /part.css');
    };
    load.mockImplementationOnce(async () => first() as never);
    render(Fetched<{ insert: (put: string) => void }>, { load, given });
    await user.click(await again());
    expect(links.map(({ href, rel }) => [new URL(href).pathname, rel])).toEqual([
      ['/part.css', 'stylesheet'],
    ]);
    links[0]!.onerror!('');
    await alert();
    await user.click(await again());
    expect(links).toHaveLength(2);
    expect(load).toHaveBeenCalledTimes(1);
    links[1]!.onload!(new Event('load'));
    await vi.waitFor(() => expect(load).toHaveBeenCalledTimes(2));
    await vi.waitFor(() => expect(screen.queryByRole('alert')).toBeNull());
  });

  it('does not keep another part from coming whose style sheets are there', async () => {
    const { links, fail } = sheet('/other.css');
    fail();
    render(Fetched<{ insert: (put: string) => void }>, {
      load: async (): Promise<Part> => ({ default: FunctionList }),
      given,
    });
    await vi.waitFor(() => expect(document.body.textContent).toContain('ROUNDCOUNT'));
    expect(screen.queryByRole('alert')).toBeNull();
    // The other is asked for all the same, though nobody waits for it.
    expect(links.map(({ href }) => new URL(href).pathname)).toEqual(['/other.css']);
    links[0]!.onload!(new Event('load'));
  });

  it('names what to choose where that fetches it again, and stays as it is once it is there', async () => {
    const load = missing(1, { default: FunctionList } satisfies Part);
    const { component } = render(Fetched<{ insert: (put: string) => void }>, { load, given, again: 'Adapt' });
    expect((await alert()).textContent).toContain('choose “Adapt” again');
    expect(screen.queryByRole('button', { name: 'try again' })).toBeNull();
    component.retry();
    await vi.waitFor(() => expect(document.body.textContent).toContain('ROUNDCOUNT'));
    component.retry();
    expect(load).toHaveBeenCalledTimes(2);
  });

  it('is the one that draws: the canvas stays empty until it is asked for again', async () => {
    const user = userEvent.setup();
    const drawn = { update: () => {}, close: () => {}, data: () => 'drawn' };
    const draw = vi.fn(() => drawn);
    const load = missing(1, draw);
    Object.defineProperty(document, 'fonts', { value: { ready: Promise.resolve() }, configurable: true });
    const loadPrinted = async () => ({ picture: vi.fn(), onPaper: vi.fn(), pngOf: vi.fn() });
    const props = { title: 'Back', label: 'Back', spec: {}, load, loadPrinted, saying: '', height: '9rem' };
    render(PlotSheet, { ...props, onkeydown: () => {} } as never);
    expect((await alert()).textContent).toMatch(/picture could not be fetched/);
    expect(draw).not.toHaveBeenCalled();
    await user.click(await again());
    await vi.waitFor(() => expect(draw).toHaveBeenCalledTimes(1));
    expect(screen.queryByRole('alert')).toBeNull();
  });
});

it('no part is fetched in the markup by itself, where nothing would fetch it again', () => {
  const bare = readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.svelte'))
    .filter((file) => /\{#await import\(/.test(readFileSync(`src/${file}`, 'utf8')));
  expect(bare).toEqual([]);
});
