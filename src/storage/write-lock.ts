/** What a window of a notebook does: it writes, or it follows the one that writes. */
export type Role = 'writing' | 'following';

/** What the windows of a notebook tell each other. */
type WindowMessage =
  /** A window that follows is there, and wants to see what the other has open. */
  | { readonly say: 'here' }
  /** The notebook as it is in the window that writes. */
  | { readonly say: 'now'; readonly text: string }
  /** A window asks to write. */
  | { readonly say: 'may I'; readonly window: string }
  /** All that was done is kept: that window may write. */
  | { readonly say: 'go on'; readonly window: string };

/** What the turn asks of the window it belongs to. */
export interface Window {
  /** The window's part is another now. */
  became(part: Role): void;
  /** Another window wrote this. */
  received(text: string): void;
  /** Keeps all that was done here and does nothing more, because another window wants to write. */
  finish(): Promise<void>;
  /** The notebook as it is here, for a window that follows. */
  now(): string;
}

/** The lock that whoever writes a notebook holds. */
export function lockOf(notebook: string): string {
  return `easewright ${notebook}`;
}

/** A window that is asked to hand over and does not answer for so long is asleep, or hangs. */
const answersWithin = 1500;

/**
 * Whose turn it is to write a notebook that is open in several windows. One holds the lock and writes; the others follow
 * what it does, and one of them takes over when it is closed, or when the person says so there.
 *
 * The lock keeps windows from writing at the same time. That no window writes over another's work even so (a window
 * that slept while its lock was taken away) is for `Shelf.write` to see.
 */
export class WriteLock {
  readonly #name: string;
  readonly #window: Window;
  readonly #own = crypto.randomUUID();
  readonly #channel: BroadcastChannel | undefined;
  readonly #locks: LockManager | undefined = navigator.locks;
  #role: Role | undefined;
  #isFollowed = false;
  #release: (() => void) | undefined;
  #queue: AbortController | undefined;
  #goOn: (() => void) | undefined;
  #closed = false;

  constructor(notebook: string, window: Window) {
    this.#name = lockOf(notebook);
    this.#window = window;
    if (!this.#locks || typeof BroadcastChannel === 'undefined') {
      // Without a secure connection browsers have no locks; then each window writes, and `Shelf.write` keeps them apart.
      this.#setRole('writing');
      return;
    }
    this.#channel = new BroadcastChannel(this.#name);
    this.#channel.onmessage = ({ data }: MessageEvent<WindowMessage>) => void this.#onMessage(data);
    this.#request({ ifAvailable: true });
  }

  /** What this window does; undefined until that is known. */
  get role(): Role | undefined {
    return this.#role;
  }

  /** Whether others follow, so that they are to be told. */
  get isFollowed(): boolean {
    return this.#isFollowed;
  }

  /** Tells the windows that follow. */
  broadcast(): void {
    if (this.#role === 'writing' && this.#isFollowed) this.#say({ say: 'now', text: this.#window.now() });
  }

  /** Takes the turn: the window that has it keeps what it did and hands over; one that does not answer is not waited for. */
  async acquire(): Promise<void> {
    if (this.#role === 'writing' || !this.#channel) return;
    this.#say({ say: 'may I', window: this.#own });
    await new Promise<void>((resolve) => {
      this.#goOn = resolve;
      setTimeout(resolve, answersWithin);
    });
    this.#goOn = undefined;
    if (this.#closed) return;
    this.#queue?.abort();
    this.#request({ steal: true });
  }

  close(): void {
    this.#closed = true;
    this.#queue?.abort();
    this.#release?.();
    this.#channel?.close();
  }

  #request(how: LockOptions): void {
    const queue = new AbortController();
    const options: LockOptions = how.ifAvailable || how.steal ? how : { signal: queue.signal };
    if (!how.ifAvailable && !how.steal) this.#queue = queue;
    this.#locks!.request(this.#name, options, (lock) => {
      if (this.#closed) return undefined;
      if (!lock) {
        this.#follow();
        return undefined;
      }
      this.#isFollowed = !how.ifAvailable;
      this.#setRole('writing');
      return new Promise<void>((resolve) => (this.#release = resolve));
    }).catch(() => {
      // Taken away by another window, or called off here to ask for it in another way.
      if (!this.#closed && !queue.signal.aborted) this.#follow();
    });
  }

  #follow(): void {
    this.#release = undefined;
    this.#setRole('following');
    this.#say({ say: 'here' });
    this.#request({});
  }

  async #onMessage(message: WindowMessage): Promise<void> {
    if (this.#closed) return;
    switch (message.say) {
      case 'here':
        this.#isFollowed = true;
        this.broadcast();
        return;
      case 'now':
        if (this.#role === 'following') this.#window.received(message.text);
        return;
      case 'may I':
        if (this.#role !== 'writing') return;
        this.#setRole('following');
        await this.#window.finish();
        this.#say({ say: 'go on', window: message.window });
        // Should that window be gone, nobody takes the lock away, and the turn is still here.
        setTimeout(() => {
          if (!this.#closed && this.#release && this.#role === 'following') this.#setRole('writing');
        }, 2 * answersWithin);
        return;
      case 'go on':
        if (message.window === this.#own) this.#goOn?.();
    }
  }

  #setRole(part: Role): void {
    if (this.#role === part) return;
    this.#role = part;
    this.#window.became(part);
  }

  #say(message: WindowMessage): void {
    if (!this.#closed) this.#channel?.postMessage(message);
  }
}
