import {
  type Fault,
  findNamedSize,
  type Length,
  type NamedSize,
  type Place,
  type Problem,
  placeWithin,
  type Reading,
  readCaliper,
  readDensity,
  readLength,
  readMass,
  readSize,
  readWeight,
  type SourceNode,
  type System,
  systemOf,
  type TextNode,
  type Unit,
} from '../engine/index.ts';
import type { WrittenText } from './entries/types.ts';

/** Faults of a text that the engine has read, with their places in the file. */
function faultProblems(faults: readonly Fault[], node: TextNode, path: string): readonly Problem[] {
  return faults.map(({ offset, ...fault }) => ({ ...fault, place: placeWithin(node, offset), path }));
}

/** A sheet or envelope: a name such as `US Letter`, or a size such as `12 x 12 in`. */
export function readSheetOrEnvelope(
  text: string,
  use: 'sheet' | 'envelope',
  units: Unit | undefined,
): Reading<NamedSize> {
  if (!startsWithNumber(text)) return findNamedSize(text, use);
  const { value, faults } = readSize(text, { units });
  if (value === undefined) return { value: undefined, faults };
  const { width, height, unit } = value;
  return { value: { id: 'written', name: text.trim(), use, width, height, unit, source: 'as written' }, faults };
}

function startsWithNumber(text: string): boolean {
  return /^\s*[\d.,½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/.test(text);
}

/** The edition that a size in words belongs to: that of its own unit. */
export function systemOfSize(text: string, units: Unit | undefined): System | undefined {
  const { value } = readSize(text, { units });
  return value === undefined ? undefined : systemOf(value.unit);
}

/** A length that was checked when its file was read. Throws on any other text. */
export function checkedLength(text: string, units: Unit | undefined): Length {
  const { value } = readLength(text, { units });
  if (value === undefined) throw new Error(`"${text}" was not checked before it was used as a length`);
  return value.length;
}

/** What a text of the frontmatter has to be. */
export type Measure =
  | 'length'
  | 'length above zero'
  | 'thickness'
  | 'mass'
  | 'density'
  | 'size'
  | 'sheet'
  | 'envelope'
  | 'weight';

/** Problems of one text, or of the texts under `inch` and `metric`. Other nodes are the schema's business. */
export function measureProblems(
  node: SourceNode | undefined,
  path: string,
  measure: Measure,
  units: Unit | undefined,
): readonly Problem[] {
  if (node === undefined || node.kind === 'list') return [];
  if (node.kind === 'map') {
    return node.entries.flatMap(({ key, value }) =>
      key.text === 'inch' || key.text === 'metric' ? measureProblems(value, `${path}.${key.text}`, measure, units) : [],
    );
  }
  if (node.text.trim() === '') return [];
  return faultProblems(readMeasure(node.text, measure, units).faults, node, path);
}

function readMeasure(text: string, measure: Measure, units: Unit | undefined): Reading<unknown> {
  if (measure === 'length') return readLength(text, { units });
  if (measure === 'length above zero') return positive(text, lengthIn(text, units));
  if (measure === 'thickness') return positive(text, readCaliper(text, { units }));
  if (measure === 'mass') return readMass(text);
  if (measure === 'density') return readDensity(text);
  if (measure === 'size') return readSize(text, { units });
  if (measure === 'weight') return readWeight(text);
  return readSheetOrEnvelope(text, measure, units);
}

function lengthIn(text: string, units: Unit | undefined): Reading<Length> {
  const { value, faults } = readLength(text, { units });
  return { value: value?.length, faults };
}

function positive(text: string, { value, faults }: Reading<Length>): Reading<Length> {
  if (value === undefined || value.isPositive) return { value, faults };
  const zero: Fault = {
    code: 'length-zero',
    severity: 'error',
    wrote: text.trim(),
    takes: 'a length greater than nothing',
    remedy: 'Write the length that you measure.',
    offset: 0,
  };
  return { value: undefined, faults: [...faults, zero] };
}

/** A text node as it is kept in an entry. */
export function written(node: TextNode, path: string): WrittenText {
  return { text: node.text.trim(), place: trimmedPlace(node), path };
}

function trimmedPlace(node: TextNode): Place {
  return placeWithin(node, node.text.length - node.text.trimStart().length);
}
