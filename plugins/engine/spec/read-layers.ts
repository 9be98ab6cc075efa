import { type MapNode, type SourceNode, type TextNode, valueAt } from '../diagnostics/index.ts';
import { type Length, readCaliper } from '../units/index.ts';
import type { RefSpec } from './assembly-specs.ts';
import { COAT_SORTS, type CoatItem, type Origin } from './card-types.ts';
import { listOr, mapOr, textOr } from './read-parts.ts';
import { readReference, trimmed } from './read-references.ts';
import { checkKeys, join, type Report, suggest } from './report.ts';

/** An entry of `layers`, its names not looked up yet. */
export type LayerSpec =
  | ({ readonly is: 'coat'; readonly on: RefSpec; readonly items: readonly CoatItem[] } & Origin)
  | ({ readonly is: 'fill'; readonly filling: TextNode } & Origin)
  | ({ readonly is: 'glue'; readonly piece: RefSpec } & Origin);

const TAKES_LAYERS = 'a list of layers in the order of work: `- { on: base.front, lay: [{ with: my-ink, as: ink }] }`';
const TAKES_LAYER = '`on` with `lay`, or `fill`, or `glue`: `{ on: base.front, lay: [{ with: my-ink, as: ink }] }`';
const TAKES_COAT = 'what is laid on: `{ with: my-ink, as: ink }`';

const MOST_LAYERS = 200;

/** `layers` of a post's card: what is laid on panels, and where in the order of work chambers are filled and pieces stuck down. */
export function readLayers(node: SourceNode, path: string, report: Report): LayerSpec[] {
  const items = entriesOf(node, path, TAKES_LAYERS, report);
  return items.flatMap((item, index) => {
    const here = join(path, index);
    const map = mapOr(item, here, TAKES_LAYER, report);
    return (map && readLayer(map, here, report)) ?? [];
  });
}

function entriesOf(node: SourceNode, path: string, takes: string, report: Report): readonly SourceNode[] {
  const items = listOr(node, path, takes, report)?.items ?? [];
  if (items.length > MOST_LAYERS) {
    const complaint = { code: 'too-many', wrote: `${items.length} entries`, takes: `at most ${MOST_LAYERS}` };
    report.at(node.place, path, { ...complaint, remedy: 'Say alike layers in one.' });
  }
  return items.slice(0, MOST_LAYERS);
}

function readLayer(map: MapNode, path: string, report: Report): LayerSpec | undefined {
  const at = (key: string): SourceNode | undefined => valueAt(map, key);
  const origin = { place: map.place, path };
  if (at('fill') !== undefined) {
    checkKeys(map, path, { known: ['fill'] }, report);
    const filling = textOr(at('fill'), join(path, 'fill'), 'a filling by its name', report);
    return filling && { is: 'fill', filling: trimmed(filling), ...origin };
  }
  if (at('glue') !== undefined) {
    checkKeys(map, path, { known: ['glue'] }, report);
    const piece = readReference(at('glue'), join(path, 'glue'), 'a piece by its name', report);
    return piece && { is: 'glue', piece, ...origin };
  }
  checkKeys(map, path, { known: ['on', 'lay'] }, report);
  for (const key of ['on', 'lay']) if (at(key) === undefined) lacks(map, path, key, TAKES_LAYER, report);
  const on = readReference(at('on'), join(path, 'on'), 'a piece or one of its panels, as `base.front`', report);
  const list = at('lay');
  const items = list === undefined ? [] : entriesOf(list, join(path, 'lay'), `a list of ${TAKES_COAT}`, report);
  const read = items.flatMap((item, index) => readCoat(item, join(join(path, 'lay'), index), report) ?? []);
  return on && { is: 'coat', on, items: read, ...origin };
}

function readCoat(item: SourceNode, path: string, report: Report): CoatItem | undefined {
  const map = mapOr(item, path, TAKES_COAT, report);
  if (map === undefined) return undefined;
  checkKeys(map, path, { known: ['with', 'as', 'through', 'and', 'thick', 'note'] }, report);
  const text = (key: string, takes: string): TextNode | undefined => {
    const node = textOr(valueAt(map, key), join(path, key), takes, report);
    return node && trimmed(node);
  };
  if (valueAt(map, 'with') === undefined) lacks(map, path, 'with', TAKES_COAT, report);
  const what = text('with', 'a supply or a stock role');
  const through = text('through', '`true` when it is laid on through this stencil');
  const and = text('and', 'what is laid on through the stencil');
  if (through && through.text !== 'true') {
    const remedy = 'Write `with:` and the stencil, `through: true`, and what goes through it after `and:`.';
    report.at(through.place, join(path, 'through'), {
      ...{ code: 'unknown-word', wrote: through.text, takes: '`true`', remedy },
    });
  }
  if (through && valueAt(map, 'and') === undefined) lacks(map, path, 'and', STENCILLED, report);
  if (!through && and) lacks(map, path, 'through', STENCILLED, report);
  if (what === undefined) return undefined;
  return {
    with: (through && and ? and : what).text,
    through: through && what.text,
    as: sortOf(text('as', 'what kind of layer it is'), path, report),
    thick: thickOf(text('thick', 'how thick it is, as `0.2 mm`'), path, report),
    note: text('note', 'a few words')?.text,
    place: map.place,
    path,
  };
}

const STENCILLED = 'a stencil and what goes through it: `{ with: my-stencil, through: true, and: my-ink }`';

function lacks(map: MapNode, path: string, key: string, takes: string, report: Report): void {
  const complaint = { code: 'key-missing', wrote: `a layer without \`${key}\``, takes };
  report.at(map.place, path, { ...complaint, remedy: `Add \`${key}:\`.` });
}

function sortOf(node: TextNode | undefined, path: string, report: Report): string | undefined {
  const word = node?.text;
  if (node === undefined || (COAT_SORTS as readonly string[]).includes(node.text)) return word;
  const takes = `one of ${COAT_SORTS.join(', ')}`;
  const remedy = suggest(node.text, COAT_SORTS, 'Write `other` where no word fits.');
  report.at(node.place, join(path, 'as'), { code: 'unknown-word', wrote: node.text, takes, remedy });
  return undefined;
}

/** A coat's thickness is no length of the card: it is not put on marks. */
function thickOf(node: TextNode | undefined, path: string, report: Report): Length | undefined {
  if (node === undefined) return undefined;
  const { value, faults } = readCaliper(node.text);
  report.faults({ node, offset: 0, path: join(path, 'thick') }, faults);
  return value;
}
