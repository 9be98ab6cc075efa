/** Elements in whose text nothing is touched: code, links, and what is no prose at all. */
const CLOSED = new Set([
  'a',
  'code',
  'kbd',
  'math',
  'option',
  'pre',
  'samp',
  'script',
  'style',
  'svg',
  'textarea',
  'title',
]);

const TAG = /<!--[\s\S]*?(?:-->|$)|<(\/?)([a-z][\w-]*)(?:"[^"]*"|'[^']*'|[^>"'])*?(\/?)>/gi;

/**
 * Follows the raw HTML of a text in reading order, to know whether what comes next stands inside an element that is
 * closed to the plugins. Markdown gives opening and closing tags as nodes of their own, with ordinary text between.
 */
export class ClosedHtml {
  readonly #open: string[] = [];

  /** Whether text that comes now is closed. */
  get closed(): boolean {
    return this.#open.length > 0;
  }

  read(html: string): void {
    for (const [, slash, tag, selfClosing] of html.matchAll(TAG)) {
      const name = tag?.toLowerCase();
      if (name === undefined || selfClosing === '/' || !CLOSED.has(name)) continue;
      if (slash !== '/') this.#open.push(name);
      else if (this.#open.includes(name)) this.#open.splice(this.#open.lastIndexOf(name));
    }
  }
}
