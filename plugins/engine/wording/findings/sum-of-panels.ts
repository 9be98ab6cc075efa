import { named, type Sentences } from './sentence.ts';

export const sumOfPanels: Sentences<'sum-of-panels'> = {
  'adds-up': ({ piece, side, total, panels }, words) => ({
    says: `The panels of ${named(piece)} add up to its ${words.length(total)} ${side === 'wide' ? 'width' : 'height'}: ${panels.map((panel) => words.length(panel)).join(' + ')}.`,
  }),
  short: ({ piece, side, declared, total, panel, by }, words) => ({
    says: `${named(piece)} is ${words.length(declared)} ${side} but its panels add up to ${words.length(total)}; ${named(panel)} is ${words.length(by)} short.`,
    remedy: `Add ${words.length(by)} to ${named(panel)} or another panel, or cut ${named(piece)} ${words.length(total)} ${side}.`,
  }),
  over: ({ piece, side, declared, total, panel, by }, words) => ({
    says: `${named(piece)} is ${words.length(declared)} ${side} but its panels add up to ${words.length(total)}; ${named(panel)} is ${words.length(by)} too long.`,
    remedy: `Take ${words.length(by)} off ${named(panel)} or another panel, or cut ${named(piece)} ${words.length(total)} ${side}.`,
  }),
  'uneven-halves': ({ piece, side, declared, total, panel, by, half }, words) => ({
    says: `${named(piece)} is ${words.length(declared)} ${side} but its panels add up to ${words.length(total)}; ${named(panel)} is ${words.length(by)} ${total.lessThan(declared) ? 'short' : 'too long'}.`,
    remedy: `A half fold of ${words.length(declared)} is scored at ${words.length(half)}.`,
  }),
};
