import { formatPlace, nearestName, type Place, type Problem } from '../../engine/index.ts';
import { shorten } from '../lines.ts';

/*
 * What can be wrong in YAML whose syntax is sound. Paths are left empty: the tree is not whole yet.
 */

export function keyTwice(name: string, place: Place, earlier: Place): Problem {
  return {
    code: 'key-twice',
    severity: 'error',
    place,
    path: '',
    wrote: `${name}:  again; it stands first at ${formatPlace(earlier)}`,
    takes: 'each name once',
    remedy: `Keep one \`${name}\` and take the other out.`,
  };
}

/** `{width:5}` is one name, not a name and its value. */
export function colonGlued(name: string, value: string, place: Place): Problem {
  return {
    code: 'colon-without-space',
    severity: 'error',
    place,
    path: '',
    wrote: shorten(`${name}:${value}`),
    takes: 'a name, a colon, a space and the value',
    remedy: `Put a space after the colon: \`${name}: ${value}\`.`,
  };
}

export function keyNotText(found: 'a list' | 'a group' | 'nothing', place: Place): Problem {
  return {
    code: 'key-not-text',
    severity: 'error',
    place,
    path: '',
    wrote: `${found} before a colon`,
    takes: 'a plain name before the colon',
    remedy:
      'Give the value a name made of letters and hyphens, such as `width`. A text that begins with [ or { needs quotes.',
  };
}

/** `Card #5` loses its number: YAML takes ` #` for the start of a note. */
export function noteOrText(whole: string, place: Place): Problem {
  return {
    code: 'note-or-text',
    severity: 'warning',
    place,
    path: '',
    wrote: shorten(whole),
    takes: 'a note after ` # `; it is left out of the value',
    remedy: `If it belongs to the text, put quotes round the whole: "${shorten(whole).replaceAll('"', "'")}". If it is a note, put a space after the #.`,
  };
}

export function aliasUnknown(name: string, known: Iterable<string>, place: Place): Problem {
  const near = nearestName(name, known);
  const quotes = `If the star belongs to the text, put it in quotes: "*${name}".`;
  return {
    code: 'alias-unknown',
    severity: 'error',
    place,
    path: '',
    wrote: `*${name}`,
    takes: `a value marked \`&${name}\` further up in the file`,
    remedy: near === undefined ? quotes : `Did you mean *${near}? ${quotes}`,
  };
}

export function aliasInsideItself(name: string, place: Place): Problem {
  return {
    code: 'alias-inside-itself',
    severity: 'error',
    place,
    path: '',
    wrote: `*${name}`,
    takes: 'a value that does not contain itself',
    remedy: 'Write the value out in full.',
  };
}

export function aliasTooMuch(name: string, parts: number, place: Place): Problem {
  return {
    code: 'alias-too-much',
    severity: 'error',
    place,
    path: '',
    wrote: `*${name}, which unfolds into more than ${parts} parts`,
    takes: 'aliases that repeat a short value',
    remedy: 'Write the values out, or repeat fewer of them.',
  };
}
