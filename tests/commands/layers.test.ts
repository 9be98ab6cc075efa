import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { CHECKS, runCheck } from '../../plugins/commands/support/checks.ts';
import { PROJECT } from '../../plugins/commands/support/project.ts';

/*
 * A rule that never bites proves nothing. A small copy of the project's layout is planted with one offence a rule, and
 * with imports that are allowed; the tool runs over it once, with the project's own rules.
 */

interface Planted {
  readonly file: string;
  readonly imports: string;
  /** The rule that must name the file; undefined when all is well. */
  readonly rule: string | undefined;
}

const PLANTED: readonly Planted[] = [
  { file: 'plugins/engine/diagnostics/bad.ts', imports: '../units/index.ts', rule: 'engine-order-diagnostics' },
  { file: 'plugins/engine/units/bad.ts', imports: '../spec/index.ts', rule: 'engine-order-units' },
  { file: 'plugins/engine/geometry/bad.ts', imports: '../spec/index.ts', rule: 'engine-order-geometry' },
  { file: 'plugins/engine/spec/bad.ts', imports: '../panels/index.ts', rule: 'engine-order-spec' },
  { file: 'plugins/engine/panels/bad.ts', imports: '../assembly/index.ts', rule: 'engine-order-panels' },
  { file: 'plugins/engine/assembly/bad.ts', imports: '../dryfit/index.ts', rule: 'engine-order-assembly' },
  { file: 'plugins/engine/motion/bad.ts', imports: '../layers/index.ts', rule: 'engine-order-motion' },
  { file: 'plugins/engine/layers/bad.ts', imports: '../dryfit/index.ts', rule: 'engine-order-layers' },
  { file: 'plugins/engine/gravity/bad.ts', imports: '../dryfit/index.ts', rule: 'engine-order-gravity-sheets-mail' },
  { file: 'plugins/engine/dryfit/bad.ts', imports: '../wording/index.ts', rule: 'engine-order-dryfit' },
  { file: 'plugins/engine/wording/bad.ts', imports: '../drawings/index.ts', rule: 'engine-order-wording' },
  { file: 'plugins/engine/drawings/bad.ts', imports: '../render/index.ts', rule: 'engine-order-drawings' },
  { file: 'plugins/engine/units/bad-node.ts', imports: 'node:fs', rule: 'engine-stays-pure' },
  { file: 'plugins/engine/units/bad-bare-node.ts', imports: 'fs', rule: 'engine-stays-pure' },
  { file: 'plugins/engine/spec/bad-yaml.ts', imports: 'yaml', rule: 'engine-stays-pure' },
  { file: 'plugins/engine/spec/bad-zod.ts', imports: 'zod', rule: 'engine-stays-pure' },
  { file: 'plugins/engine/spec/bad-astro.ts', imports: 'astro/config', rule: 'engine-stays-pure' },
  { file: 'plugins/engine/spec/bad-unified.ts', imports: 'unified', rule: 'engine-stays-pure' },
  { file: 'plugins/engine/render/bad-pdfkit.ts', imports: 'pdfkit', rule: 'engine-stays-pure' },
  { file: 'plugins/engine/render/bad-types.ts', imports: 'mathjs', rule: 'engine-stays-pure' },
  { file: 'plugins/engine/render/bad-out.ts', imports: '../../content/index.ts', rule: 'engine-knows-no-neighbours' },
  { file: 'plugins/content/bad-door.ts', imports: '../engine/units/index.ts', rule: 'engine-by-its-door' },
  { file: 'site/bad-door.ts', imports: '../plugins/engine/units/length.ts', rule: 'engine-by-its-door' },
  { file: 'plugins/content/bad.ts', imports: '../markdown/index.ts', rule: 'content-imports-engine-only' },
  { file: 'plugins/markdown/bad.ts', imports: '../astro/index.ts', rule: 'markdown-imports-content-and-engine' },
  { file: 'plugins/astro/bad.ts', imports: '../commands/index.ts', rule: 'astro-imports-no-commands' },
  { file: 'plugins/astro/bad-test.ts', imports: '../../tests/index.ts', rule: 'astro-imports-no-commands' },
  { file: 'plugins/commands/bad.ts', imports: '../../tests/index.ts', rule: 'nothing-imports-tests' },
  { file: 'site/bad.ts', imports: '../plugins/commands/index.ts', rule: 'site-imports-no-commands' },
  { file: 'tests/oracles/bad.ts', imports: '../../plugins/engine/index.ts', rule: 'oracles-stand-alone' },
  { file: 'site/round-a.ts', imports: './round-b.ts', rule: 'no-cycles' },
  { file: 'site/bad-nowhere.ts', imports: './nowhere.ts', rule: 'no-unresolved' },
  { file: 'plugins/engine/render/good.ts', imports: '../diagnostics/index.ts', rule: undefined },
  { file: 'plugins/engine/units/good-fraction.ts', imports: 'fraction.js', rule: undefined },
  { file: 'plugins/content/good.ts', imports: '../engine/index.ts', rule: undefined },
  { file: 'plugins/content/good-node.ts', imports: 'node:fs', rule: undefined },
  { file: 'plugins/content/good-zod.ts', imports: 'zod', rule: undefined },
  { file: 'plugins/markdown/good.ts', imports: '../content/index.ts', rule: undefined },
  { file: 'plugins/astro/good.ts', imports: '../markdown/index.ts', rule: undefined },
  { file: 'plugins/commands/good.ts', imports: '../astro/index.ts', rule: undefined },
  { file: 'site/good.ts', imports: '../plugins/content/index.ts', rule: undefined },
  { file: 'site/good-virtual.ts', imports: 'astro:content', rule: undefined },
  { file: 'tests/engine/good.ts', imports: '../../plugins/engine/units/index.ts', rule: undefined },
  { file: 'tests/oracles/good.test.ts', imports: '../../plugins/engine/index.ts', rule: undefined },
];

const STAGES =
  'diagnostics units geometry spec panels assembly motion layers gravity dryfit wording drawings render'.split(' ');

const copy = mkdtempSync(join(tmpdir(), 'layers-'));
const offences = new Map<string, string[]>();

beforeAll(() => {
  for (const name of ['.dependency-cruiser.cjs', 'tsconfig.json', 'package.json'])
    cpSync(join(PROJECT, name), join(copy, name));
  symlinkSync(join(PROJECT, 'node_modules'), join(copy, 'node_modules'));
  const doors = [
    ...STAGES.map((stage) => `plugins/engine/${stage}/index.ts`),
    ...['engine', 'content', 'markdown', 'astro', 'commands'].map((part) => `plugins/${part}/index.ts`),
    'plugins/engine/units/length.ts',
    'tests/index.ts',
  ];
  for (const door of doors) plant(door, 'export const value = 1;\n');
  for (const { file, imports } of PLANTED) {
    // Half of them import types only: those count as much.
    const kind = file.length % 2 === 0 ? 'import type { value }' : 'import { value }';
    plant(file, `${kind} from '${imports}';\nexport const use: typeof value | undefined = undefined;\n`);
  }
  plant('site/round-b.ts', `export { use as value } from './round-a.ts';\n`);
  const layers = CHECKS.find((check) => check.name === 'layers');
  if (layers === undefined) throw new Error('there is no check of layers');
  const { said } = runCheck({ ...layers, args: [...layers.args, '--output-type', 'json'] }, copy);
  const { summary } = JSON.parse(said) as { summary: { violations: { from: string; rule: { name: string } }[] } };
  for (const { from, rule } of summary.violations) offences.set(from, [...(offences.get(from) ?? []), rule.name]);
});
afterAll(() => rmSync(copy, { recursive: true }));

function plant(file: string, text: string): void {
  mkdirSync(dirname(join(copy, file)), { recursive: true });
  writeFileSync(join(copy, file), text);
}

describe('an import across the layers', () => {
  test.each(PLANTED.filter(({ rule }) => rule !== undefined))('$file of $imports offends $rule', ({ file, rule }) => {
    expect(offences.get(file)).toContain(rule);
  });
  test.each(PLANTED.filter(({ rule }) => rule === undefined))('$file of $imports is allowed', ({ file }) => {
    expect(offences.get(file)).toBeUndefined();
  });
});

test('every rule has an offence planted', () => {
  const { forbidden } = createRequire(import.meta.url)(join(PROJECT, '.dependency-cruiser.cjs')) as {
    forbidden: { name: string }[];
  };
  expect(forbidden.map(({ name }) => name).sort()).toEqual(
    [...new Set(PLANTED.flatMap(({ rule }) => rule ?? []))].sort(),
  );
});
