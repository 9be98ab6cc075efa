import { createContext, runInContext } from 'node:vm';
import { build } from 'esbuild';
import { describe, expect, test } from 'vitest';
import { PROJECT } from '../../plugins/commands/support/project.ts';
import { readYaml } from '../../plugins/content/index.ts';

/** The whole engine, as a script of a page has it. */
async function bundleEngine(): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents: `export * from './plugins/engine/index.ts';`, resolveDir: PROJECT, loader: 'ts' },
    bundle: true,
    write: false,
    platform: 'browser',
    format: 'iife',
    globalName: 'engine',
    target: 'es2023',
    external: [],
    logLevel: 'silent',
  });
  return outputFiles[0]?.text ?? '';
}

const SIDE_FOLD = `
name: Side fold
units: in
parameters:
  width: { default: 4 1/4, from: 2, to: 8, label: Width }
  height: { default: 5 1/2, from: 2, to: 11, label: Height }
pieces:
  base: { across: [front width, valley spine, back width], down: height }
poses: { closed: {} }
`;

/** What a script in a page would do: from the tree of a fold to a card, its panels, its dry fit and its drawing. */
const MAKE_CARD = `
(() => {
  const { fold, problems } = engine.readFold(JSON.parse(tree));
  if (problems.length > 0) return JSON.stringify(problems);
  const mark = engine.Length.fromInches('1/16');
  const { card, problems: more } = engine.makeCard(fold, { system: 'inch', mark, units: 'in', parameters: undefined, own: undefined, recipe: [] });
  if (!card) return JSON.stringify(more);
  const folded = engine.foldCard(card, { envelope: undefined, clearance: mark, sheets: {}, promised: undefined });
  const drawing = engine.cuttingDrawing(card.pieces[0], folded.panelling, { system: 'inch' });
  return JSON.stringify({
    width: engine.formatLength(card.pieces[0].width, 'inch'),
    height: engine.formatLength(card.pieces[0].height, 'inch'),
    panels: folded.panelling.panels.length,
    closes: engine.dryFit(folded).find(({ check }) => check === 'closes-flat').state,
    svg: engine.renderSvg(drawing, { idPrefix: 'a' }).slice(0, 4),
  });
})()
`;

describe('the engine, bundled for a browser with nothing left out', async () => {
  const code = await bundleEngine();
  const bare = createContext({});

  test('asks for no module', () => {
    expect(code).not.toMatch(/\b(require|import)\s*\(/);
    expect(code.length).toBeGreaterThan(10_000);
  });

  test('makes a card where there is no Node and no page', () => {
    const { tree } = readYaml(SIDE_FOLD, 'side-fold.md');
    runInContext('delete globalThis.console', bare); // V8 brings one of its own
    runInContext(code, bare);
    Object.assign(bare, { tree: JSON.stringify(tree) });
    const absent = ['process', 'Buffer', 'document', 'console', 'setTimeout', 'fetch'];
    for (const name of absent) expect(runInContext(`typeof ${name}`, bare)).toBe('undefined');
    // Two panels of 4 1/4 in side by side are 8 1/2 in: plain sums.
    expect(JSON.parse(String(runInContext(MAKE_CARD, bare)))).toEqual({
      width: '8 1/2 in',
      height: '5 1/2 in',
      panels: 2,
      closes: 'pass',
      svg: '<svg',
    });
  });
});
