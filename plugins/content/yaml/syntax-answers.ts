import { isCollection, isScalar, visit, type YAMLError } from 'yaml';
import { type Lines, shorten } from '../lines.ts';
import { quotesFor } from './quotes-cure.ts';

/** What to say about a slip of syntax. */
export interface Answer {
  readonly code: string;
  /** Offset to point at, when it is not where YAML stumbled. */
  readonly at?: number;
  readonly wrote?: string;
  readonly takes: string;
  readonly remedy: string;
}

/** A place where YAML could not go on. */
export interface Stumble {
  readonly error: YAMLError;
  readonly contents: unknown;
  readonly text: string;
  readonly lines: Lines;
}

export const TOO_DEEP: Answer = {
  code: 'too-deep',
  takes: 'a few levels inside one another',
  remedy: 'Take out the repeated brackets or hyphens.',
};

/** The maker's words for an error of the YAML parser. */
export function answerTo(stumble: Stumble): Answer {
  const { error, lines } = stumble;
  const line = lines.lineOf(error.pos[0]);
  switch (error.code) {
    case 'TAB_AS_INDENT':
      return {
        code: 'tab-indent',
        wrote: shorten(`a tab before: ${line}`),
        takes: 'spaces at the beginning of a line',
        remedy: 'Take the tab out and put two spaces for each step inwards.',
      };
    case 'BAD_SCALAR_START':
    case 'TAG_RESOLVE_FAILED':
    case 'BAD_ALIAS':
      return quotesFor(
        'odd-first-character',
        line,
        `a value that begins with a letter or a number, or stands in quotes: \`${stumble.text[error.pos[0]]}\` at the start means something else here`,
      );
    case 'BLOCK_AS_IMPLICIT_KEY':
      return nestedAnswer(stumble, line);
    case 'MULTILINE_IMPLICIT_KEY':
      return missingColonAnswer(line);
    case 'BAD_DQ_ESCAPE':
      return {
        code: 'odd-escape',
        takes: 'a backslash in double quotes only before a few letters, such as \\n',
        remedy: 'Write two backslashes for one, or put the value in single quotes.',
      };
    case 'MULTIPLE_DOCS':
      return {
        code: 'second-part',
        takes: 'one part to a file',
        remedy: 'Take out the line of hyphens or dots in the middle of the file, and what follows it.',
      };
    case 'BLOCK_IN_FLOW':
      return {
        code: 'colon-in-list',
        takes: 'inside [ ] or { } each item on its own, with a comma between',
        remedy: 'Put a comma between the items, or quotes round an item that has a colon in it.',
      };
    case 'RESOURCE_EXHAUSTION':
      return TOO_DEEP;
    case 'BAD_INDENT':
    case 'MISSING_CHAR':
    case 'UNEXPECTED_TOKEN':
      return openEndAnswer(stumble) ?? tokenAnswer(stumble, line);
    default:
      return plainAnswer;
  }
}

const plainAnswer: Answer = {
  code: 'yaml-syntax',
  takes: '`name: value` on each line, and values with odd characters in quotes',
  remedy: 'Compare the line with its neighbours. Where in doubt put the whole value in quotes.',
};

/** `title: Lantern: night`, or a value on its name's line with more lines below it. */
function nestedAnswer(stumble: Stumble, line: string): Answer {
  const value = /^(?:- +)?[^:]+: +(.*)$/.exec(line)?.[1] ?? line;
  if (/:(\s|$)/.test(value))
    return quotesFor(
      'colon-in-value',
      line,
      'one colon to a line; a value with a colon and a space in it needs quotes',
    );
  if (/^- /.test(line) || line === '-') return indentAnswer;
  const { column } = stumble.lines.placeOf(stumble.error.pos[0]);
  return {
    code: 'value-and-group',
    takes: 'either a value beside the name, or lines set further in below it, not both',
    remedy: `Line ${stumble.lines.placeOf(stumble.error.pos[1]).line + 1} is set further in than this one. Begin both at the same column, or take away the value at column ${column}.`,
  };
}

/** `title:Lantern` or `Lantern night` among `name: value` lines. */
function missingColonAnswer(line: string): Answer {
  const glued = /^([\w-]+):(\S.*)$/.exec(line);
  if (glued !== null) {
    return {
      code: 'colon-without-space',
      takes: 'a name, a colon, a space and the value',
      remedy: `Put a space after the colon: \`${glued[1]}: ${glued[2]}\`.`,
    };
  }
  if (/^-\S/.test(line)) {
    return {
      code: 'hyphen-without-space',
      takes: 'a hyphen, a space and the item',
      remedy: `Put a space after the hyphen: \`- ${line.slice(1)}\`.`,
    };
  }
  return {
    code: 'name-without-value',
    takes: '`name: value` on each line',
    remedy:
      'Put a colon and a space after the name. A text that goes on from the line above is set further in than its name.',
  };
}

const indentAnswer: Answer = {
  code: 'uneven-indent',
  takes: 'lines of one group all beginning at the same column',
  remedy: 'Move the line so that it begins where the others of its group begin.',
};

/** Quotes and brackets that are never closed: point at the one that opens. */
function openEndAnswer({ error, contents, lines }: Stumble): Answer | undefined {
  const quote = /^Missing closing (["'])quote/.exec(error.message)?.[1];
  if (quote !== undefined) {
    const at = openedAt(contents, error.pos[0], (node) => isScalar(node) && /^QUOTE/.test(node.type ?? ''));
    return {
      code: 'quote-not-closed',
      ...(at === undefined ? {} : { at }),
      takes: `a second ${quote} where the text ends`,
      remedy: `Close the quotes: put ${quote} at the end of the value. An inch mark on its own needs no quotes round it: 5 1/2".`,
    };
  }
  const bracket = /^Flow (?:sequence|map) in block collection must be .* end with a ([\]}])$/.exec(error.message)?.[1];
  if (bracket === undefined) return undefined;
  const at = openedAt(contents, error.pos[0], (node) => isCollection(node) && node.flow === true);
  const { line } = lines.placeOf(error.pos[0]);
  const below = at === undefined || lines.placeOf(at).line === line ? '' : `, before line ${line} goes on`;
  return {
    code: 'bracket-not-closed',
    ...(at === undefined ? {} : { at }),
    takes: `a ${bracket} for each ${bracket === ']' ? '[' : '{'}`,
    remedy: `Put ${bracket} after the last item${below}. Lines inside the brackets are set further in than the name.`,
  };
}

/** Start of the innermost matching node that was still open at `offset`. */
function openedAt(contents: unknown, offset: number, matches: (node: unknown) => boolean): number | undefined {
  let found: number | undefined;
  if (!isCollection(contents) && !isScalar(contents)) return undefined;
  visit(contents, {
    Node(_, node) {
      const range = node.range;
      if (matches(node) && range && range[0] <= offset && range[1] >= offset) found = range[0];
    },
  });
  return found;
}

function tokenAnswer({ error, text }: Stumble, line: string): Answer {
  const { message } = error;
  const at = text[error.pos[0]] ?? '';
  if (error.code === 'BAD_INDENT') return indentAnswer;
  if (/at node end|Unexpected scalar token/.test(message)) {
    return quotesFor(
      'text-after-value',
      line,
      'nothing after the closing quote, bracket or star; quotes go round the whole value',
    );
  }
  if (/block-seq-ind on same line/.test(message)) {
    return {
      code: 'list-beside-name',
      takes: 'a list below its name, one `- item` to a line, or [ ] beside it',
      remedy: 'Begin the list on the next line. If the hyphen belongs to the text, put the value in quotes.',
    };
  }
  if (/Implicit map keys need/.test(message)) return missingColonAnswer(line);
  if (/[\]}]/.test(at)) {
    return {
      code: 'bracket-too-many',
      takes: 'a closing bracket for each opening one, of the same kind',
      remedy: `Take the ${at} out, or put its opening ${at === ']' ? '[' : '{'} where the list begins.`,
    };
  }
  if (/Missing , /.test(message) || /,/.test(at)) {
    return {
      code: 'comma-in-list',
      takes: 'one comma between two items',
      remedy: 'Put a comma between the items, and none before the first.',
    };
  }
  if (/Comments must be separated/.test(message)) {
    return quotesFor('note-glued', line, 'a space before a # that begins a note');
  }
  if (/lock scalar header|Not a YAML token/.test(message)) {
    return {
      code: 'text-beside-bar',
      takes: 'nothing after | or > on its line; the text stands on the lines below, set further in',
      remedy: 'Put the text on the next line, or take the sign away.',
    };
  }
  return plainAnswer;
}
