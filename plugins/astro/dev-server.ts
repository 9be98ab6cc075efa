import type { IncomingMessage, ServerResponse } from 'node:http';
import path from 'node:path';
import type { AstroIntegrationLogger } from 'astro';
import type { ViteDevServer } from 'vite';
import type { ContentReader } from './content-reader.ts';
import { contentTypeOf, downloadAt } from './downloads.ts';
import { overlayOf } from './errors.ts';

export interface DevSetup {
  readonly server: ViteDevServer;
  readonly logger: AstroIntegrationLogger;
  readonly reader: ContentReader;
  /** What is wrong with the content now; undefined when nothing is. */
  readonly standing: () => unknown;
  /** Has Astro load every collection again. */
  readonly refresh: () => Promise<void>;
  readonly root: string;
  /** Where the site stands: `/` or `/blog/`. */
  readonly base: string;
}

/** Editors write a file in several steps, and save several files at once. */
const SETTLE_MS = 60;

/** How often a refresh that Astro let fall is asked for again: about a minute, in case its configuration is broken. */
const MOST_ATTEMPTS = 1000;

/** Reads the content again whenever anything below `content/` changes, and shows in the browser what is wrong with it. */
export function watchContent({ server, logger, reader, standing, refresh, root }: DevSetup): void {
  const folder = path.join(root, 'content') + path.sep;
  let timer: NodeJS.Timeout | undefined;
  const readSoon = (attempts: number): void => {
    clearTimeout(timer);
    timer = setTimeout(() => readAgain(attempts), SETTLE_MS);
  };
  const readAgain = async (attempts: number): Promise<void> => {
    const before = standing();
    const begun = reader.begun;
    try {
      await refresh();
    } catch (error) {
      logger.error(error instanceof Error ? error.message : String(error));
    }
    // While Astro loads its own configuration anew it lets a refresh fall without a word, and the change would be lost.
    if (reader.begun === begun && attempts < MOST_ATTEMPTS) return readSoon(attempts + 1);
    const now = standing();
    const { hot } = server.environments.client;
    if (now !== undefined) hot.send({ type: 'error', err: overlayOf(now) });
    else if (before !== undefined) hot.send({ type: 'full-reload', path: '*' });
  };
  server.watcher.add(folder);
  server.watcher.on('all', (_event, file) => {
    if (path.resolve(file).startsWith(folder)) readSoon(0);
  });
}

/** Serves the files beside the projects, and the problems in place of any page while there are some. */
export function serveContent({ server, reader, standing, base }: DevSetup): void {
  server.middlewares.use(async (request, response, next) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const below = pathname.startsWith(base) ? pathname.slice(base.length) : pathname;
    try {
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
