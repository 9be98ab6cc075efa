import { entryAt, type MapNode, type Problem, type SourceNode, type Unit, valueAt } from '../../engine/index.ts';
import { slugOf } from '../ids.ts';
import { measureProblems, systemOfSize, written } from '../measures.ts';
import { joinPath } from '../paths.ts';
import { cardFields } from '../schemas/card.ts';
import {
  besideCards,
  cardWithoutFold,
  cardWithoutName,
  nameTwice,
  oddFold,
  oddParameters,
  ownWithoutFold,
  withoutFold,
} from './card-slips.ts';
import { editionsOf, isWritten } from './editions-of.ts';
import type { CardSpec, PerEdition, WrittenText } from './types.ts';

export interface Cards {
  readonly cards: readonly CardSpec[];
  readonly problems: readonly Problem[];
}

/** The cards of a post's frontmatter: none, one written at the top, or those under `cards`. */
export function cardsOf(map: MapNode, units: Unit | undefined): Cards {
  const several = entryAt(map, 'cards');
  const atTop = Object.keys(cardFields).flatMap((name) => entryAt(map, name) ?? []);
  if (several !== undefined) {
    const problems = atTop.map(({ key }) => besideCards(key.text, key.place));
    const read = several.value.kind === 'list' ? listedCards(several.value.items, units) : { cards: [], problems: [] };
    return { cards: read.cards, problems: [...problems, ...read.problems] };
  }
  const isCard = valueAt(map, 'fold') !== undefined || valueAt(map, 'recipe') !== undefined;
  if (!isCard) return { cards: [], problems: atTop.map(({ key }) => withoutFold(key.text, key.place)) };
  const { card, problems } = cardOf(map, '', units);
  return { cards: [{ ...card, key: slugOf(card.name ?? '') || 'card' }], problems };
}

function listedCards(items: readonly SourceNode[], units: Unit | undefined): Cards {
  const cards: CardSpec[] = [];
  const problems: Problem[] = [];
  for (const [index, item] of items.entries()) {
    if (item.kind !== 'map') continue;
    const path = `cards[${index}]`;
    const read = cardOf(item, path, units);
    problems.push(...read.problems);
    if (read.card.kind === undefined && read.card.recipe === undefined && entryAt(item, 'fold') === undefined) {
      problems.push(cardWithoutFold(item, path));
    }
    if (read.card.name === undefined) problems.push(cardWithoutName(item, path));
    const key = slugOf(read.card.name ?? '') || `card-${index + 1}`;
    const earlier = cards.find((card) => card.key === key);
    if (earlier !== undefined) problems.push(nameTwice(item, path, earlier.path));
    else cards.push({ ...read.card, key });
  }
  return { cards, problems };
}

function cardOf(map: MapNode, path: string, units: Unit | undefined): { card: CardSpec; problems: readonly Problem[] } {
  const fold = readUse(map, path);
  const at = (name: string): string => joinPath(path, name);
  const problems = [
    ...fold.problems,
    ...measureProblems(valueAt(map, 'envelope'), at('envelope'), 'envelope', units),
    ...measureProblems(valueAt(map, 'sheet'), at('sheet'), 'sheet', units),
    ...measureProblems(valueAt(map, 'finished'), at('finished'), 'size', units),
    ...ownProblems(map, path, fold.kind !== undefined),
  ];
  const nameNode = valueAt(map, 'name');
  const name = nameNode?.kind === 'text' && nameNode.text.trim() !== '' ? nameNode.text.trim() : undefined;
  const recipe = valueAt(map, 'recipe');
  const add = valueAt(map, 'add');
  const layers = valueAt(map, 'layers');
  const card: CardSpec = {
    key: '',
    name,
    path,
    place: map.place,
    kind: fold.kind,
    parameters: fold.parameters,
    own: ownParameters(map),
    recipe: recipe !== undefined && isWritten(recipe) ? recipe : undefined,
    add: add !== undefined && isWritten(add) ? add : undefined,
    layers: layers !== undefined && isWritten(layers) ? layers : undefined,
    stock: stockOf(map, path),
    envelope: editionsOf(valueAt(map, 'envelope'), at('envelope')),
    sheet: editionsOf(valueAt(map, 'sheet'), at('sheet')),
    finished: promisedSize(valueAt(map, 'finished'), at('finished'), units),
  };
  return { card, problems };
}

interface Use {
  readonly kind: WrittenText | undefined;
  readonly parameters: MapNode | undefined;
  readonly problems: readonly Problem[];
}

/** `fold: side-fold` or `fold: { side-fold: { width: 5 in } }`. */
function readUse(map: MapNode, path: string): Use {
  const entry = entryAt(map, 'fold');
  const at = joinPath(path, 'fold');
  if (entry === undefined || !isWritten(entry.value)) return { kind: undefined, parameters: undefined, problems: [] };
  const node = entry.value;
  if (node.kind === 'text') return { kind: written(node, at), parameters: undefined, problems: [] };
  const [first, ...others] = node.kind === 'map' ? node.entries : [];
  if (first === undefined || others.length > 0) {
    return { kind: undefined, parameters: undefined, problems: [oddFold(node, at)] };
  }
  const kind = written(first.key, at);
  if (first.value.kind === 'map') return { kind, parameters: first.value, problems: [] };
  if (!isWritten(first.value)) return { kind, parameters: undefined, problems: [] };
  return { kind, parameters: undefined, problems: [oddParameters(first.value, joinPath(at, kind.text))] };
}

function ownParameters(map: MapNode): PerEdition<MapNode> {
  const inch = valueAt(map, 'inch');
  const metric = valueAt(map, 'metric');
  return { ...(inch?.kind === 'map' ? { inch } : {}), ...(metric?.kind === 'map' ? { metric } : {}) };
}

function ownProblems(map: MapNode, path: string, hasKind: boolean): readonly Problem[] {
  return (['inch', 'metric'] as const).flatMap((system): Problem[] => {
    const entry = entryAt(map, system);
    if (entry === undefined || !isWritten(entry.value)) return [];
    if (entry.value.kind !== 'map') return [oddParameters(entry.value, joinPath(path, system))];
    if (hasKind || valueAt(map, 'fold') !== undefined) return [];
    return [ownWithoutFold(entry, joinPath(path, system))];
  });
}

function stockOf(map: MapNode, path: string): CardSpec['stock'] {
  const node = valueAt(map, 'stock');
  if (node?.kind !== 'map') return {};
  const pairs = node.entries.flatMap(({ key, value }) =>
    value.kind === 'text' && isWritten(value)
      ? [[key.text, written(value, joinPath(path, `stock.${key.text}`))] as const]
      : [],
  );
  return Object.fromEntries(pairs);
}

/** A promise in inches says nothing of the metric edition, unless it is made for both. */
function promisedSize(node: SourceNode | undefined, path: string, units: Unit | undefined): PerEdition<WrittenText> {
  if (node?.kind !== 'text') return editionsOf(node, path);
  const system = isWritten(node) ? systemOfSize(node.text, units) : undefined;
  return system === undefined ? {} : { [system]: written(node, path) };
}
