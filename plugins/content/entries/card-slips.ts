import {
  describeNode,
  type MapEntry,
  type MapNode,
  type Problem,
  type SourceNode,
  valueAt,
} from '../../engine/index.ts';
import { shorten } from '../lines.ts';
import { joinPath } from '../paths.ts';

/*
 * What can be wrong with the cards of a post, beyond the shape of each field.
 */

export function besideCards(name: string, place: Problem['place']): Problem {
  return {
    code: 'card-twice',
    severity: 'error',
    place,
    path: name,
    wrote: `\`${name}\` at the top, and \`cards\` as well`,
    takes: 'one card with its keys at the top, or several under `cards`',
    remedy: `Move \`${name}\` into the entry of its card under \`cards\`.`,
  };
}

export function withoutFold(name: string, place: Problem['place']): Problem {
  return {
    code: 'card-without-fold',
    severity: 'error',
    place,
    path: name,
    wrote: `\`${name}\` without a \`fold\``,
    takes: 'a `fold` or a `recipe` beside it: together they make the card',
    remedy: `Add the fold, such as \`fold: side-fold\`, or take \`${name}\` out if the post has no card.`,
  };
}

export function cardWithoutFold(item: MapNode, path: string): Problem {
  return {
    code: 'card-without-fold',
    severity: 'error',
    place: item.place,
    path,
    wrote: shorten(describeNode(item)),
    takes: 'a `fold` or a `recipe` for each card',
    remedy: 'Add the fold, such as `fold: side-fold`.',
  };
}

export function cardWithoutName(item: MapNode, path: string): Problem {
  return {
    code: 'card-without-name',
    severity: 'error',
    place: item.place,
    path: joinPath(path, 'name'),
    wrote: shorten(describeNode(item)),
    takes: 'a `name` for each card under `cards`, by which readers and directives tell them apart',
    remedy: 'Add a name, such as `name: The ferry card`.',
  };
}

export function nameTwice(item: MapNode, path: string, earlier: string): Problem {
  const name = valueAt(item, 'name');
  return {
    code: 'card-name-twice',
    severity: 'error',
    place: name?.place ?? item.place,
    path: joinPath(path, 'name'),
    wrote: shorten(name === undefined ? describeNode(item) : describeNode(name)),
    takes: 'a different name for each card',
    remedy: `Choose another name: \`${earlier}\` has this one already.`,
  };
}

export function oddFold(node: SourceNode, path: string): Problem {
  const names = node.kind === 'map' ? node.entries.map(({ key }) => key.text) : [];
  const written = names.includes('pieces');
  return {
    code: 'fold-shape',
    severity: 'error',
    place: node.place,
    path,
    wrote: shorten(describeNode(node)),
    takes: 'one fold, such as `side-fold`, or `{ side-fold: { width: 5 in } }`',
    remedy: written
      ? 'Put the fold into a file of its own among the folds, and use it here by its name.'
      : names.length > 1
        ? 'Keep one fold. Several cards stand under `cards`, each with its own `fold`; parameters stand inside the fold: { side-fold: { width: 5 in } }.'
        : 'Write the name of one fold.',
  };
}

export function oddParameters(node: SourceNode, path: string): Problem {
  return {
    code: 'parameters-shape',
    severity: 'error',
    place: node.place,
    path,
    wrote: shorten(describeNode(node)),
    takes: 'parameters with their values, such as `{ width: 5 in, height: 7 in }`',
    remedy: 'Write the name of the parameter before its value.',
  };
}

export function ownWithoutFold({ key, value }: MapEntry, path: string): Problem {
  return {
    code: 'own-without-fold',
    severity: 'error',
    place: key.place,
    path,
    wrote: shorten(describeNode(value)),
    takes: 'parameters of a fold; a recipe has none',
    remedy: 'Name the `fold` that the recipe makes, or take this out.',
  };
}
