import { nearestName, type Place, type Problem } from '../engine/index.ts';
import { PLACE_NAMES } from './place-names.ts';

const LIST = PLACE_NAMES.map((name) => `::${name}`).join(', ');

type Start = Pick<Problem, 'severity' | 'place' | 'path' | 'wrote'>;

function start(wrote: string, place: Place): Start {
  return { severity: 'error', place, path: '', wrote };
}

export function unknownPlace(wrote: string, name: string, place: Place): Problem {
  const near = nearestName(name, PLACE_NAMES);
  const remedy = near === undefined ? 'Use one of these, or take the line out.' : `Did you mean ::${near}?`;
  return { ...start(wrote, place), code: 'place-unknown', takes: LIST, remedy };
}

export function wrongColons(wrote: string, name: string, place: Place): Problem {
  const near = nearestName(name, PLACE_NAMES);
  const remedy = near === undefined ? 'Take the colons out.' : `Write ::${near} on one line, and nothing to end it.`;
  return { ...start(wrote, place), code: 'place-wrong-colons', takes: `one line with two colons: ${LIST}`, remedy };
}

export function malformedPlace(wrote: string, name: string, place: Place): Problem {
  const near = nearestName(name, PLACE_NAMES);
  return {
    ...start(wrote, place),
    code: 'place-malformed',
    takes: `nothing but the name on its line, or the name and one card: ${LIST}, ::drawing{card=name}`,
    remedy:
      near === undefined
        ? 'Put a backslash before the colons if they are part of the text.'
        : `Write ::${near} alone, or ::${near}{card=name} without spaces before the bracket.`,
  };
}

export function nestedPlace(wrote: string, place: Place): Problem {
  return {
    ...start(wrote, place),
    code: 'place-nested',
    takes: 'a line at the left margin, outside lists, quotations and notes',
    remedy: 'Move the line to the left margin, with an empty line before and after it.',
  };
}

export function placeWithLabel(wrote: string, name: string, place: Place): Problem {
  return {
    ...start(wrote, place),
    code: 'place-with-label',
    takes: `::${name}, without a text in square brackets`,
    remedy: 'Take out the square brackets, and write their text as a sentence before or after.',
  };
}

export function unknownAttribute(wrote: string, attribute: string, place: Place): Problem {
  const near = nearestName(attribute, ['card']);
  return {
    ...start(wrote, place),
    code: 'place-unknown-attribute',
    takes: 'card, and nothing else, in the curly brackets',
    remedy: near === undefined ? `Take out \`${attribute}\`.` : `Did you mean \`${near}\`?`,
  };
}

export function unknownCard(wrote: string, card: string, cards: readonly string[], place: Place): Problem {
  const near = nearestName(card, cards);
  return {
    ...start(wrote, place),
    code: 'place-unknown-card',
    takes: cards.length === 0 ? 'no card: this post has none' : `one of this post's cards: ${cards.join(', ')}`,
    remedy: near === undefined ? 'Name one of these, or leave {card=...} out.' : `Did you mean card=${near}?`,
  };
}

export function placeWithoutCard(wrote: string, place: Place): Problem {
  return {
    ...start(wrote, place),
    code: 'place-without-card',
    takes: '::supplies only: this post has no card',
    remedy: 'Give the post a `fold`, or take the line out.',
  };
}

export function placeOutsidePost(wrote: string, place: Place): Problem {
  return {
    ...start(wrote, place),
    code: 'place-outside-post',
    takes: 'text only: drawings and lists are placed in posts',
    remedy: 'Take the line out.',
  };
}

export function placedTwice(wrote: string, line: number, place: Place): Problem {
  return {
    ...start(wrote, place),
    code: 'place-twice',
    takes: 'each thing once on a page',
    remedy: `It stands already on line ${line}: take one of the two out.`,
  };
}
