/**
 * Lets pages be made, or content be taken up, but not both at once.
 *
 * A page that is being made while Astro throws its old content away can put the old content back among what Astro keeps, and
 * every later page is then old. Nobody waits for longer than `patience`: a page that hangs must not stop the maker's next
 * change from being read, nor a reading that hangs the next page.
 */
export class PageGate {
  readonly #patience: number;
  #pages = 0;
  #closed = false;
  #waiting: (() => void)[] = [];

  /** @param patience the longest that anybody waits, in milliseconds */
  constructor(patience: number) {
    this.#patience = patience;
  }

  /** Content is about to change: new pages wait. Closing a closed gate does nothing. */
  close(): void {
    this.#closed = true;
  }

  open(): void {
    this.#closed = false;
    this.#tell();
  }

  /** Resolves when no page is being made. */
  async quiet(): Promise<void> {
    await this.#until(() => this.#pages === 0);
  }

  /** Resolves when a page may be made; the caller then calls what it is given when the page has been sent. */
  async enter(): Promise<() => void> {
    await this.#until(() => !this.#closed);
    this.#pages++;
    let left = false;
    return () => {
      if (left) return;
      left = true;
      this.#pages--;
      this.#tell();
    };
  }

  async #until(holds: () => boolean): Promise<void> {
    const end = performance.now() + this.#patience;
    while (!holds() && performance.now() < end) {
      await new Promise<void>((resolve) => {
        const timer = setTimeout(resolve, this.#patience);
        this.#waiting.push(() => {
          clearTimeout(timer);
          resolve();
        });
      });
    }
  }

  #tell(): void {
    const waiting = this.#waiting;
    this.#waiting = [];
    for (const wake of waiting) wake();
  }
}
