import { type ListNode, nearestName, placeWithin, type SourceNode, type TextNode } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import { readExpression, readText } from './parse.ts';
import { checkName, wrongShape } from './read-parts.ts';
import { type Complaint, isCutShort, isSplitByComma, join, notYet, type Report, splitByComma } from './report.ts';
import type { BandSpec, CreaseSpec, StripSpec } from './types.ts';
import { EDGES, isName } from './words.ts';

export type Side = 'across' | 'down';

/** More panels than any folded card has. Keeps every walk over a strip short. */
const MOST_ITEMS = 400;

const TAKES_BAND = 'a band as `front 4 1/4`: its name, then its size';
const TAKES_STRIP = 'a size, or bands with creases between them: `[front 4 1/4, valley spine, back 4 1/4]`';

/** `across` or `down` of a piece: one measure, or a strip of bands with a crease between each two. */
export function readStrip(
  node: SourceNode,
  side: Side,
  path: string,
  units: Unit | undefined,
  report: Report,
): StripSpec | undefined {
  if (node.kind === 'map') {
    report.at(node.place, path, wrongShape(node, TAKES_STRIP));
    return undefined;
  }
  if (node.kind === 'list') return readBands(node, side, path, units, report);
  if (/,/u.test(node.text) && /valley|mountain/u.test(node.text)) {
    const remedy = `Put brackets round the strip: \`[${node.text}]\`.`;
    report.at(node.place, path, { code: 'strip-without-brackets', wrote: node.text, takes: TAKES_STRIP, remedy });
    return undefined;
  }
  const size = readText(node, path, units, report);
  return size && { bands: [{ name: undefined, size, place: node.place, path }], creases: [], place: node.place };
}

type Item = { readonly is: 'band'; readonly band: BandSpec } | { readonly is: 'crease'; readonly crease: CreaseSpec };

function readBands(
  list: ListNode,
  side: Side,
  path: string,
  units: Unit | undefined,
  report: Report,
): StripSpec | undefined {
  if (list.items.length === 0 || list.items.length > MOST_ITEMS) {
    const takes = list.items.length === 0 ? TAKES_STRIP : `at most ${MOST_ITEMS} bands and creases`;
    report.at(list.place, path, wrongShape(list, takes));
    return undefined;
  }
  const items: (Item | undefined)[] = [];
  for (let index = 0; index < list.items.length; index++) {
    const node = list.items[index];
    const next = list.items[index + 1];
    if (node?.kind === 'text' && next?.kind === 'text' && isCutShort(node.text) && isSplitByComma(next.text)) {
      report.at(node.place, join(path, index), splitByComma(`${node.text}, ${next.text}`, TAKES_BAND));
      items.push(undefined);
      index++;
    } else if (node) items.push(readItem(node, join(path, index), units, report));
  }
  checkOrder(items, list, path, report);
  const bands = items.flatMap((item) => (item?.is === 'band' ? [item.band] : []));
  const creases = items.flatMap((item) => (item?.is === 'crease' ? [item.crease] : []));
  checkEdges(bands, creases, items.includes(undefined), side, report);
  const whole = !items.includes(undefined) && bands.length === creases.length + 1;
  return whole ? { bands, creases, place: list.place } : undefined;
}

function readItem(node: SourceNode, path: string, units: Unit | undefined, report: Report): Item | undefined {
  if (node.kind !== 'text') {
    const first = node.kind === 'map' ? (node.entries[0]?.key.text ?? '') : '';
    const later = ['each', 'panel', 'between', 'in-turn'].includes(first);
    report.at(node.place, path, later ? notYet(first, TAKES_BAND) : wrongShape(node, TAKES_BAND));
    return undefined;
  }
  const words = /^(\s*)(\S*)(\s*)(.*)$/su.exec(node.text);
  const [lead, first, gap, rest] = [words?.[1] ?? '', words?.[2] ?? '', words?.[3] ?? '', (words?.[4] ?? '').trimEnd()];
  if (first === 'valley' || first === 'mountain') {
    const crease = readCrease(node, first, rest, lead.length + first.length + gap.length, path, report);
    return crease && { is: 'crease', crease };
  }
  if (first === 'both') {
    report.at(node.place, path, notYet(first, '`valley` or `mountain`'));
    return undefined;
  }
  const meant = nearestName(first, ['valley', 'mountain']);
  if (meant !== undefined && (rest === '' || isName(rest))) {
    const remedy = `Did you mean \`${`${meant} ${rest}`.trim()}\`?`;
    report.at(node.place, path, { code: 'unknown-word', wrote: node.text, takes: '`valley` or `mountain`', remedy });
    return undefined;
  }
  const band = readBand(node, first, rest, lead.length + first.length + gap.length, path, units, report);
  return band && { is: 'band', band };
}

function readBand(
  node: TextNode,
  name: string,
  rest: string,
  offset: number,
  path: string,
  units: Unit | undefined,
  report: Report,
): BandSpec | undefined {
  if (!/^\p{L}/u.test(name)) {
    const remedy =
      node.text.trim() === ''
        ? 'Write a band here, or take the comma out.'
        : `Give the band a name: \`front ${node.text.trim()}\`.`;
    report.at(node.place, path, {
      code: 'band-without-name',
      wrote: node.text || 'nothing',
      takes: TAKES_BAND,
      remedy,
    });
    return undefined;
  }
  const key: TextNode = { ...node, text: name };
  if (!checkName(key, path, 'a name for the band', false, report)) return undefined;
  if (rest === '') {
    const remedy = `Give \`${name}\` its size: \`${name} 4 1/4\`, or \`${name} rest\` for what is left.`;
    report.at(node.place, path, { code: 'band-without-size', wrote: node.text, takes: TAKES_BAND, remedy });
    return undefined;
  }
  const band = { name, place: node.place, path };
  if (rest === 'rest') return { ...band, size: undefined };
  const size = readExpression({ node, offset, path }, rest, units, report);
  return size && { ...band, size };
}

function readCrease(
  node: TextNode,
  fold: 'valley' | 'mountain',
  rest: string,
  offset: number,
  path: string,
  report: Report,
): CreaseSpec | undefined {
  const crease = { fold, place: node.place, path };
  if (rest === '') return { ...crease, name: undefined };
  const key: TextNode = { ...node, text: rest, place: placeWithin(node, offset), quoted: false };
  if (/^\d/u.test(rest)) {
    const remedy = `A crease has no size of its own: it lies between two bands. Write \`${fold}\` alone, or \`${fold} spine\`.`;
    report.at(key.place, path, { code: 'crease-with-size', wrote: node.text, takes: `\`${fold}\` and a name`, remedy });
    return undefined;
  }
  return checkName(key, path, 'a name for the crease', false, report) ? { ...crease, name: rest } : undefined;
}

/** A strip goes band, crease, band: nothing else divides paper in two. Items that could not be read are passed over. */
function checkOrder(items: readonly (Item | undefined)[], list: ListNode, path: string, report: Report): void {
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
function checkEdges(
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
