import type { CollectionName, ContentSource, StoredEntry } from './loaders/collections.ts';
import type { Reading } from './reading.ts';

export interface ReaderHooks {
  readonly read: () => Promise<Reading>;
  /** Told of each good reading. */
  readonly whenRead: (reading: Reading) => void;
  /** Told of each reading that failed. When it returns, the last good reading goes on being used. */
  readonly whenFailed: (error: unknown) => void;
}

/** Serves all collections from one reading of the files: each takes it once, and who asks a second time starts the next. */
export class ContentReader implements ContentSource {
  readonly #hooks: ReaderHooks;
  readonly #taken = new Set<CollectionName>();
  #next: Promise<Reading | undefined> | undefined;
  #last: Reading | undefined;
  #begun = 0;

  constructor(hooks: ReaderHooks) {
    this.#hooks = hooks;
  }

  /** The last good reading: what the collections hold. */
  get last(): Reading | undefined {
    return this.#last;
  }

  /** How many readings have begun, whether or not they came out well. */
  get begun(): number {
    return this.#begun;
  }

  async entriesOf(collection: CollectionName): Promise<readonly StoredEntry[] | undefined> {
    if (this.#next === undefined || this.#taken.has(collection)) {
      this.#taken.clear();
      this.#next = this.#read();
    }
    this.#taken.add(collection);
    return (await this.#next)?.entries[collection];
  }

  async #read(): Promise<Reading | undefined> {
    this.#begun++;
    try {
      const reading = await this.#hooks.read();
      this.#last = reading;
      this.#hooks.whenRead(reading);
    } catch (error) {
      this.#hooks.whenFailed(error);
    }
    return this.#last;
  }
}
