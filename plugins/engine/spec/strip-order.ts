import type { ListNode } from '../diagnostics/index.ts';
import type { Complaint, Report } from './report.ts';
import type { BandSpec, CreaseSpec } from './types.ts';
import { EDGES } from './words.ts';

export type Side = 'across' | 'down';

/** What stands in a strip. */
export type Item =
  | { readonly is: 'band'; readonly band: BandSpec }
  | { readonly is: 'crease'; readonly crease: CreaseSpec };

/** A strip goes band, crease, band: nothing else divides paper in two. Items that could not be read are passed over. */
export function checkOrder(items: readonly (Item | undefined)[], list: ListNode, path: string, report: Report): void {
  items.forEach((item, index) => {
    if (item === undefined) return;
    const { place, path: here } = item.is === 'band' ? item.band : item.crease;
    const say = (complaint: Omit<Complaint, 'wrote'>): void => {
      const node = list.items.find((candidate) => candidate.place === place);
      report.at(place, here, { wrote: node?.kind === 'text' ? node.text : path, ...complaint });
    };
    const takes = 'a band, a crease, a band, and so on';
    const before = items[index - 1];
    const outside = item.is === 'crease' && (index === 0 || index === items.length - 1);
    if (outside) {
      const remedy = index === 0 ? 'Put a band before it, or take it out.' : 'Put a band after it, or take it out.';
      say({ code: 'crease-divides-nothing', takes, remedy });
    } else if (before?.is === 'band' && item.is === 'band') {
      const remedy = `Put \`valley\` or \`mountain\` between \`${before.band.name}\` and \`${item.band.name}\`, or make them one band.`;
      say({ code: 'two-bands', takes, remedy });
    } else if (before?.is === 'crease' && item.is === 'crease') {
      say({ code: 'two-creases', takes, remedy: 'Put a band between the two creases, or take one of them out.' });
    }
  });
}

/** `left`, `right`, `top` and `bottom` name a band only where it lies on that edge, and never a crease. */
export function checkEdges(
  bands: readonly BandSpec[],
  creases: readonly CreaseSpec[],
  incomplete: boolean,
  side: Side,
  report: Report,
): void {
  const [first, last] = side === 'across' ? ['left', 'right'] : ['top', 'bottom'];
  const isEdge = (name: string | undefined): name is string =>
    name !== undefined && (EDGES as readonly string[]).includes(name);
  bands.forEach((band, index) => {
    if (!isEdge(band.name) || incomplete) return;
    if ((band.name === first && index === 0) || (band.name === last && index === bands.length - 1)) return;
    const takes = `of the edges, \`${first}\` for the first band and \`${last}\` for the last`;
    const remedy = `This band does not lie on the ${band.name} edge. Give it another name.`;
    report.at(band.place, band.path, { code: 'edge-name', wrote: band.name, takes, remedy });
  });
  for (const crease of creases) {
    if (!isEdge(crease.name)) continue;
    const remedy = `A crease never lies on the ${crease.name} edge. Give it another name.`;
    const takes = 'a name for the crease other than left, right, top and bottom';
    report.at(crease.place, crease.path, { code: 'edge-name', wrote: crease.name, takes, remedy });
  }
}
