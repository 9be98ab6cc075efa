/** `npm run gallery [-- --out FOLDER]`: one page with every drawing of every fold kind, for the eye to check. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { foldOf, readContent, readLibrary } from '../content/index.ts';
import {
  cuttingDrawing,
  formatProblems,
  type PageScene,
  panelsOf,
  renderSvg,
  type SheetFormat,
  SYSTEMS,
  type System,
  templatePages,
} from '../engine/index.ts';
import { type KindVariant, variantsOf } from './support/kind-variants.ts';
import { PROJECT } from './support/project.ts';

const SHEETS: Readonly<Record<System, SheetFormat>> = { inch: 'letter', metric: 'a4' };

const { values } = parseArgs({ options: { out: { type: 'string', default: join(PROJECT, '.gallery') } } });
const { library, problems } = readLibrary(readContent(PROJECT));
if (problems.length > 0) console.error(formatProblems(problems));
const sections = [...(library?.folds.values() ?? [])].map((kind) => {
  const fold = foldOf(kind);
  const drawings = SYSTEMS.flatMap((system) => variantsOf(fold, system).map((variant) => drawVariant(variant, system)));
  return `<h2>${fold.name}</h2><div class="sheets">${drawings.join('')}</div>`;
});
const folder = resolve(values.out);
mkdirSync(folder, { recursive: true });
const file = join(folder, 'index.html');
writeFileSync(file, pageOf(sections));
console.log(file);

/** The cutting drawings on light and dark paper, and the pages of the template. */
function drawVariant({ how, card }: KindVariant, system: System): string {
  const panelling = panelsOf(card);
  const id = `${card.name} ${how} ${system}`;
  const scenes = card.pieces.flatMap((piece) =>
    (['right', 'left'] as const).map((hand) => ({ hand, scene: cuttingDrawing(piece, panelling, { system, hand }) })),
  );
  const drawings = scenes.map(({ hand, scene }, i) => {
    const tone = hand === 'left' ? 'dark' : 'light';
    return `<div class="${tone}">${renderSvg(scene, { idPrefix: `${id} ${hand} ${i}`, className: 'drawing' })}</div>`;
  });
  const cards = [{ name: card.name, card, panelling }];
  const pages = templatePages({ cards, system, sheet: SHEETS[system], title: card.name });
  const sheets = pages.map((page: PageScene, i) => renderSvg(page, { idPrefix: `${id} page ${i}`, className: 'page' }));
  return `<h3>${how}, ${system}</h3>${drawings.join('')}${sheets.join('')}`;
}

function pageOf(parts: readonly string[]): string {
  const faces = [400, 700].map((weight) => {
    const name = `@fontsource/alegreya-sans/files/alegreya-sans-latin-${weight}-normal.woff2`;
    const bytes = readFileSync(createRequire(import.meta.url).resolve(name)).toString('base64');
    const source = `url(data:font/woff2;base64,${bytes})`;
    return `@font-face { font-family: "Alegreya Sans"; font-weight: ${weight}; src: ${source}; }`;
  });
  return `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<title>Every drawing</title>
<style>
${faces.join('\n')}
body { margin: 2rem; background: #efe9dc; color: #22201c; font-family: "Alegreya Sans", sans-serif; }
.sheets { display: flex; flex-wrap: wrap; gap: 1rem; align-items: flex-start; }
h3 { flex-basis: 100%; margin: 1rem 0 0; }
.light { background: #fffdf8; color: #22201c; }
.dark { background: #1c1b19; color: #eee6d6; }
.page { background: white; color: black; width: auto; height: 480px; }
.drawing { width: 480px; height: auto; }
.scene-text { font-feature-settings: "tnum", "lnum"; }
.scene-fraction { font-feature-settings: "frac", "lnum"; }
</style>
<h1>Every drawing</h1>
<p>Each kind at its defaults and at both ends of each parameter: for the right hand on light paper, for the left on dark.</p>
${parts.join('\n')}
</html>
`;
}
