import { describe, expect, it } from 'vitest';
import { PROJECT } from '../../plugins/commands/support/project.ts';
import {
  buildLibrary,
  computeKind,
  computeProject,
  readContent,
  summariseEdition,
} from '../../plugins/content/index.ts';
import { formatProblems, sayLayers } from '../../plugins/engine/index.ts';
import { contentOf, file, post } from './support.ts';

const GEL = file('content/supplies/foam-gel.yaml', 'name: Foam gel\ncategory: gel\ncaliper: 0.4 mm\n');
const INK = file('content/supplies/tide-ink.yaml', 'name: Tide ink\ncategory: ink\n');

describe('the layer list of a card', () => {
  function layersOf(layers: string) {
    const base = contentOf([post('ferry', `fold: side-fold\nlayers: ${layers}\nstock: { cover: slate-card }`)]);
    const { library, problems } = buildLibrary({ ...base, supplies: [...base.supplies, GEL, INK] });
    const found = library?.posts.get('ferry');
    if (library === undefined || found === undefined) throw new Error(formatProblems(problems));
    const edition = computeProject(library, found).project.cards[0]?.editions.metric;
    if (edition === undefined) throw new Error('no card');
    return summariseEdition(edition).layers.filter(({ is }) => is === 'coat');
  }

  it.each([
    ['back', 'on back'],
    ['front', 'on front'],
    ['outside of front', 'on the back of front'],
  ])('knows how high a gel stands on %s', (on, where) => {
    const [gel] = layersOf(`[{ on: ${on}, lay: [{ with: foam-gel, as: gel }] }]`);
    expect(gel?.says).toBe(`Gel ${where}: Foam gel.`);
    expect(gel?.adds?.mm).toBe('2/5');
  });

  it('takes the height that is written beside a coat, and nothing for an ink', () => {
    const coats = layersOf(
      '[{ on: back, lay: [{ with: tide-ink }, { with: foam-gel, thick: 1 mm }, { with: foam-gel }] }]',
    );
    expect(coats.map(({ says, adds }) => [says, adds?.mm])).toEqual([
      ['On back: Tide ink.', '0'],
      ['On back: Foam gel.', '1'],
      ['On back: Foam gel.', '2/5'],
    ]);
  });
});

describe('of every fold of the catalogue', () => {
  const { library, problems } = buildLibrary(readContent(PROJECT));
  if (library === undefined) throw new Error(formatProblems(problems));

  it.each([...library.folds.keys()])('%s: each piece is taken up once, each join is made once', (id) => {
    const kind = library.folds.get(id);
    const { project } = kind === undefined ? { project: undefined } : computeKind(library, kind);
    for (const { card, work, assembly, materials } of Object.values(project?.editions ?? {})) {
      const lines = sayLayers(work, assembly, materials);
      const of = (is: string) => lines.filter((line) => line.is === is);
      expect(of('piece')).toHaveLength(card.pieces.length);
      expect(new Set(of('piece').map(({ says }) => says.split(':')[0])).size).toBe(card.pieces.length);
      expect(of('join')).toHaveLength(card.joins.filter(({ is }) => is !== 'rest').length);
      expect(of('fill')).toHaveLength(card.fillings.length);
    }
  });
});
