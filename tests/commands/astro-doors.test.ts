import { globSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { describe, expect, test } from 'vitest';
import { PROJECT } from '../../plugins/commands/support/project.ts';

/*
 * The tool that keeps the layers does not read .astro files, so their imports are looked at here.
 */

/** Imports of an .astro file that a page may not have, each with why. `file` is relative to the project. */
function offendingImports(file: string, text: string): string[] {
  const found = [...text.matchAll(/(?:\bfrom|\bimport)\s*\(?\s*['"]([^'"]+)['"]/g)].map((match) => match[1] ?? '');
  return found.flatMap((specifier) => {
    if (!specifier.startsWith('.')) return [];
    const target = relative(PROJECT, join(PROJECT, dirname(file), specifier)).replaceAll('\\', '/');
    if (/^plugins\/engine\//.test(target) && target !== 'plugins/engine/index.ts')
      return [`${target}: not by the engine's door`];
    if (/^(plugins\/commands|tests)\//.test(target)) return [`${target}: not for pages`];
    return [];
  });
}

const pages = globSync('site/**/*.astro', { cwd: PROJECT }).sort();

test('there are .astro files to look at', () => {
  expect(pages.length).toBeGreaterThan(5);
});

test('no .astro file reaches past a door', () => {
  const offences = pages.flatMap((file) =>
    offendingImports(file, readFileSync(join(PROJECT, file), 'utf8')).map((offence) => `${file}: ${offence}`),
  );
  expect(offences).toEqual([]);
});

describe('what counts as reaching past a door', () => {
  test.each([
    [`import { Length } from '../../plugins/engine/units/length.ts';`, 1],
    [`import type { Length } from "../../plugins/engine/units/index.ts";`, 1],
    [`const { x } = await import('../../plugins/engine/render/svg.ts');`, 1],
    [`import '../../plugins/commands/build.ts';`, 1],
    [`import { x } from '../../tests/site/support/pages.ts';`, 1],
    [`import { Length } from '../../plugins/engine/index.ts';`, 0],
    [`import { Post } from '../../plugins/content/index.ts';`, 0],
    [`import { getCollection } from 'astro:content';`, 0],
  ])('%s: %i', (line, count) => {
    expect(offendingImports('site/pages/index.astro', `---\n${line}\n---\n<p>text</p>`)).toHaveLength(count);
  });
});
