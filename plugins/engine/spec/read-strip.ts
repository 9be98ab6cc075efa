import { type ListNode, nearestName, placeWithin, type SourceNode, type TextNode } from '../diagnostics/index.ts';
import type { Unit } from '../units/index.ts';
import { readExpression, readText } from './parse.ts';
import { checkName, wrongShape } from './read-parts.ts';
import { isCutShort, isSplitByComma, join, type Report, splitByComma } from './report.ts';
import { checkEdges, checkOrder, type Item, type Side } from './strip-order.ts';
import type { BandSpec, CreaseSpec, StripSpec } from './types.ts';
import { isName } from './words.ts';

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
    report.at(node.place, path, wrongShape(node, TAKES_BAND));
    return undefined;
  }
  const words = /^(\s*)(\S*)(\s*)(.*)$/su.exec(node.text);
  const [lead, first, gap, rest] = [words?.[1] ?? '', words?.[2] ?? '', words?.[3] ?? '', (words?.[4] ?? '').trimEnd()];
  if (first === 'valley' || first === 'mountain') {
    const crease = readCrease(node, first, rest, lead.length + first.length + gap.length, path, report);
    return crease && { is: 'crease', crease };
  }
  if (first === 'both') {
    const remedy =
      'Between bands a crease folds one way. Write one that is worked both ways under `creases`: `{ left: 2, fold: both }`.';
    report.at(node.place, path, { code: 'both-in-strip', wrote: node.text, takes: '`valley` or `mountain`', remedy });
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
