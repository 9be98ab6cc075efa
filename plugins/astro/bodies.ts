import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { MarkdownRenderer } from '@astrojs/markdown-remark';
import { type Post, readDocument, readPost, type SourceFile } from '../content/index.ts';
import { hasErrors, type Marks, type Problem } from '../engine/index.ts';
import { asFrontmatter, type BodyContext } from '../markdown/index.ts';
import { type Cache, digestOf } from './cache.ts';
import { renderingProblem } from './errors.ts';
import type { RenderedBody } from './loaders/collections.ts';

/** How texts are rendered: everything that is the same for all of them. */
export interface BodyPress {
  readonly root: string;
  readonly renderer: MarkdownRenderer;
  readonly marks: Marks;
  readonly decimalComma: boolean;
  readonly cache: Cache;
  /** Digest of all code. */
  readonly code: string;
}

export interface Body {
  /** Undefined when the text could not be rendered. */
  readonly rendered: RenderedBody | undefined;
  readonly problems: readonly Problem[];
}

/**
 * The text of a file as HTML, with what the Markdown plugins found. A text without errors is rendered once: its key holds
 * the whole file, the rulers and all code, and nothing else can change it.
 *
 * @param post the entry of the file when it is a post and could be read; undefined for other files
 */
export async function renderBody(
  file: SourceFile,
  isPost: boolean,
  post: Post | undefined,
  press: BodyPress,
): Promise<Body> {
  const marks = [press.marks.inch, press.marks.metric].map((mark) => mark.mm.toFraction());
  const key = digestOf('body', press.code, file.path, file.text, String(isPost), ...marks, String(press.decimalComma));
  const kept = await press.cache.getJson<Body>(key);
  if (kept !== undefined) return kept;
  const body = await render(file, isPost, post, press);
  if (body.rendered !== undefined && !hasErrors(body.problems)) await press.cache.put(key, JSON.stringify(body));
  return body;
}

async function render(file: SourceFile, isPost: boolean, post: Post | undefined, press: BodyPress): Promise<Body> {
  const { body, bodyLine } = readDocument(file);
  const entry = isPost ? (post ?? readPost(file).entry) : undefined;
  const context: BodyContext = {
    file: file.path,
    placing: isPost,
    cards: entry?.cards.map((card) => card.key),
    marks: press.marks,
    decimalComma: press.decimalComma,
    problems: [],
  };
  try {
    // Empty lines stand in for the frontmatter, so that Markdown counts lines as an editor does.
    const { code, metadata } = await press.renderer.render('\n'.repeat(bodyLine - 1) + body, {
      frontmatter: asFrontmatter(context),
      fileURL: pathToFileURL(path.resolve(press.root, file.path)),
    });
    const imagePaths = [...metadata.localImagePaths, ...metadata.remoteImagePaths];
    return {
      rendered: { html: code, metadata: { headings: metadata.headings, imagePaths } },
      problems: context.problems,
    };
  } catch (error) {
    return { rendered: undefined, problems: [...context.problems, renderingProblem(file.path, bodyLine, error)] };
  }
}
