import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { type RehypePlugins, type RemarkPlugins, unified } from '@astrojs/markdown-remark';
import type { AstroConfig, AstroIntegration, AstroIntegrationLogger } from 'astro';
import { formatProblem } from '../engine/index.ts';
import { Cache } from './cache.ts';
import { codeDigest } from './code-digest.ts';
import { ContentReader } from './content-reader.ts';
import { serveContent, watchContent } from './dev-server.ts';
import { writeDownloads } from './downloads.ts';
import { makeFilesAhead } from './files-ahead.ts';
import { KeptPages } from './kept-pages.ts';
import { INTEGRATION, SOURCE_HOOK } from './loaders/collections.ts';
import { processorOptions } from './markdown-processor.ts';
import { PageGate } from './page-gate.ts';
import { type Reading, type ReadingTools, readEverything } from './reading.ts';

export interface CreasewrightOptions {
  /** Further plugins for all texts. They run after the ones for measures and places. */
  readonly remarkPlugins?: RemarkPlugins;
  readonly rehypePlugins?: RehypePlugins;
}

/** How long a page waits for the content to be read, and a reading for a page to be sent, in the development server. */
const MOST_PATIENCE_MS = 10_000;

/**
 * Reads `content/`, checks it, renders its texts, feeds the collections (see `collectionLoader`), and writes the files
 * that lie beside each project. The pages are Astro's.
 */
export default function creasewright({
  remarkPlugins = [],
  rehypePlugins = [],
}: CreasewrightOptions = {}): AstroIntegration {
  let command: 'dev' | 'build' | 'preview' | 'sync' = 'build';
  let config: AstroConfig | undefined;
  let logger: AstroIntegrationLogger | undefined;
  let tools: Promise<ReadingTools> | undefined;
  let filesMade: (() => Promise<void>) | undefined;
  let keptPages: KeptPages | undefined;
  let wrong: unknown;

  const read = async (): Promise<Reading> => {
    if (config === undefined) throw new Error('the content was asked for before the configuration was settled');
    tools ??= toolsFor(config, [remarkPlugins, rehypePlugins]);
    return readEverything(await tools);
  };
  const reader = new ContentReader({
    read,
    whenRead({ warnings, desk, setup }) {
      wrong = undefined;
      if (command === 'build') filesMade = makeFilesAhead(desk, setup);
      for (const problem of warnings) logger?.warn(formatProblem(problem));
    },
    whenFailed(error) {
      if (command !== 'dev') throw error;
      wrong = error;
      logger?.error(error instanceof Error ? error.message : String(error));
    },
  });

  return {
    name: INTEGRATION,
    hooks: {
      'astro:config:setup'(setup) {
        command = setup.command;
        logger = setup.logger;
        setup.updateConfig({
          markdown: { processor: unified(processorOptions(remarkPlugins, rehypePlugins)) },
          // A page that gives a `cacheKey` is taken from the build before while neither that nor its code has changed.
          experimental: { incrementalBuild: true },
        });
      },
      'astro:config:done'(done) {
        config = done.config;
        keptPages = new KeptPages(fileURLToPath(config.cacheDir));
      },
      [SOURCE_HOOK]: () => reader,
      'astro:server:setup'({ server, refreshContent, logger: own }) {
        if (config === undefined) return;
        const root = fileURLToPath(config.root);
        const refresh = async (): Promise<void> => refreshContent?.({});
        const setup = {
          server,
          logger: own,
          reader,
          standing: () => wrong,
          refresh,
          gate: new PageGate(MOST_PATIENCE_MS),
          root,
          base: withSlash(config.base),
        };
        watchContent(setup);
        serveContent(setup);
      },
      // Called when the content has been read, before the first page is made.
      'astro:build:setup'() {
        keptPages?.begin();
      },
      async 'astro:build:done'({ dir, logger: own }) {
        keptPages?.end();
        if (reader.last === undefined) throw new Error('the site was built without its content');
        await filesMade?.();
        const count = await writeDownloads(reader.last, fileURLToPath(dir));
        await (await tools)?.cache.prune();
        own.info(`${count} files written beside the projects`);
      },
    },
  };
}

type RendererOptions = Parameters<AstroConfig['markdown']['processor']['createRenderer']>[0];

async function toolsFor(config: AstroConfig, planted: readonly unknown[]): Promise<ReadingTools> {
  const { markdown, image } = config;
  const root = fileURLToPath(config.root);
  return {
    root,
    renderer: await markdown.processor.createRenderer({ ...markdown, image } as RendererOptions),
    cache: new Cache(path.join(fileURLToPath(config.cacheDir), INTEGRATION)),
    code: codeDigest(root, planted),
  };
}

function withSlash(base: string): string {
  return base.endsWith('/') ? base : `${base}/`;
}
