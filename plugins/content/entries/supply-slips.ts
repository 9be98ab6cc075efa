import { describeNode, type MapNode, type MaterialSort, type Problem, valueAt } from '../../engine/index.ts';
import { shorten } from '../lines.ts';

/** Figures of a supply that only some sorts of things have. */
const WHOSE: Readonly<Record<string, { readonly sorts: readonly MaterialSort[]; readonly of: string }>> = {
  bead: { sorts: ['filler'], of: 'a loose filler: beads, sequins, glitter' },
  height: { sorts: ['foam', 'board', 'ornament'], of: 'foam, board or an ornament' },
  mass: { sorts: ['ornament'], of: 'an ornament that is weighed by itself' },
  density: { sorts: ['filler', 'foam', 'board'], of: 'a loose filler, foam or board' },
};

const INSTEAD: Readonly<Record<string, string>> = {
  height: 'Write the thickness of a sheet or a coat under `caliper`.',
  mass: 'Write the weight of a paper by its area under `weight`, as `216 gsm`.',
};

/** A figure that would be looked at by nothing: silently losing it would make the card thinner or lighter than it is. */
export function misplacedFigures(map: MapNode, sort: MaterialSort, category: string): readonly Problem[] {
  return Object.entries(WHOSE).flatMap(([name, { sorts, of }]): Problem[] => {
    const node = valueAt(map, name);
    if (node === undefined || sorts.includes(sort) || (node.kind === 'text' && node.text.trim() === '')) return [];
    return [
      {
        code: 'figure-misplaced',
        severity: 'error',
        place: node.place,
        path: name,
        wrote: shorten(`${name}: ${describeNode(node)}, of ${category}`),
        takes: `\`${name}\` of ${of}`,
        remedy: INSTEAD[name] ?? `Correct the \`category\`, or take \`${name}\` out.`,
      },
    ];
  });
}
