import type { IncomingMessage, ServerResponse } from 'node:http';
import path from 'node:path';
import type { AstroIntegrationLogger } from 'astro';
import type { ViteDevServer } from 'vite';
import type { ContentReader } from './content-reader.ts';
import { contentTypeOf, downloadAt } from './downloads.ts';
import { overlayOf } from './errors.ts';
import type { PageGate } from './page-gate.ts';

export interface DevSetup {
  readonly server: ViteDevServer;
  readonly logger: AstroIntegrationLogger;
  readonly reader: ContentReader;
  /** What is wrong with the content now; undefined when nothing is. */
  readonly standing: () => unknown;
  /** Has Astro load every collection again. */
  readonly refresh: () => Promise<void>;
  readonly gate: PageGate;
  readonly root: string;
  /** Where the site stands: `/` or `/blog/`. */
  readonly base: string;
}

/** Editors write a file in several steps, and save several files at once. */
const SETTLE_MS = 60;

/** How often a refresh that Astro let fall is asked for again: about a minute, in case its configuration is broken. */
const MOST_ATTEMPTS = 1000;

/** Reads the content again whenever anything below `content/` changes, and shows in the browser what is wrong with it. */
export function watchContent({ server, logger, reader, standing, refresh, gate, root }: DevSetup): void {
  const folder = path.join(root, 'content') + path.sep;
  let changes = 0;
  let reading = false;

  const takeUp = async (): Promise<void> => {
    for (let attempt = 0; attempt < MOST_ATTEMPTS; ) {
      let seen: number;
      do {
        seen = changes;
        await settled();
      } while (seen !== changes);
      await gate.quiet();
      const begun = reader.begun;
      try {
        await refresh();
      } catch (error) {
        logger.error(error instanceof Error ? error.message : String(error));
      }
      // While Astro loads its own configuration anew it lets a refresh fall without a word, and the change would be lost.
      if (reader.begun === begun) attempt++;
      else if (seen === changes) return;
    }
  };
  const readSoon = async (): Promise<void> => {
    changes++;
    gate.close();
    if (reading) return;
    reading = true;
    const before = standing();
    await takeUp();
    reading = false;
    gate.open();
    const now = standing();
    const { hot } = server.environments.client;
    if (now !== undefined) hot.send({ type: 'error', err: overlayOf(now) });
    else if (before !== undefined) hot.send({ type: 'full-reload', path: '*' });
  };

  server.watcher.add(folder);
  server.watcher.on('all', (_event, file) => {
    if (path.resolve(file).startsWith(folder)) readSoon();
  });
}

function settled(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, SETTLE_MS));
}

/** Serves the files beside the projects, and the problems in place of any page while there are some. */
export function serveContent({ server, reader, standing, gate, base }: DevSetup): void {
  server.middlewares.use(async (request, response, next) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const below = pathname.startsWith(base) ? pathname.slice(base.length) : pathname;
    try {
      if (wantsPage(request)) response.once('close', await gate.enter());
      const wrong = standing();
      if (wrong !== undefined && wantsPage(request)) return showProblems(response, wrong, base);
      const bytes = reader.last === undefined ? undefined : await downloadAt(reader.last, below);
      if (bytes === undefined) return next();
      response.setHeader('Content-Type', contentTypeOf(pathname));
      response.setHeader('Cache-Control', 'no-store');
      response.end(bytes);
    } catch (error) {
      next(error);
    }
  });
}

function wantsPage(request: IncomingMessage): boolean {
  return request.method === 'GET' && (request.headers.accept ?? '').includes('text/html');
}

/** A page that says what is wrong, in text and in the overlay, and reloads itself when it has been put right. */
function showProblems(response: ServerResponse, error: unknown, base: string): void {
  const client = JSON.stringify(`${base}@vite/client`);
  const overlay = overlayOf(error);
  const script = `import { ErrorOverlay } from ${client}; document.body.append(new ErrorOverlay(${inScript(overlay)}));`;
  response.statusCode = 500;
  response.setHeader('Content-Type', 'text/html; charset=utf-8');
  response.end(
    `<!doctype html><html lang="en"><title>The content needs attention</title><pre>${escapeHtml(overlay.message)}</pre><script type="module">${script}</script>`,
  );
}

function inScript(value: unknown): string {
  return JSON.stringify(value).replaceAll('<', '\\u003c');
}

function escapeHtml(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}
