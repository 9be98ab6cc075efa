import { counted, named, type Sentences } from './sentence.ts';

export const linesOnPaper: Sentences<'lines-on-paper'> = {
  'on-paper': ({ piece, lines }) => ({
    says: `${lines === 1 ? 'The one line or shape' : `All ${lines} lines and shapes`} drawn on ${named(piece)} ${lines === 1 ? 'lies' : 'lie'} on its paper.`,
  }),
  'off-paper': ({ piece, line }) => ({
    says: `No part of ${named(line)} lies on the paper of ${named(piece)}.`,
    remedy: `Check where ${named(line)} begins and ends, and whether a window or a corner that is cut away lies under it.`,
  }),
  'divides-nothing': ({ piece, line, stretch }) => ({
    says: `Nothing folds along ${stretch === 1 ? named(line) : `stretch ${stretch} of ${named(line)}`}: ${named(piece)} has one and the same panel on both sides of it.`,
    remedy: `Let ${named(line)} run on to an edge, a cut or another crease, or draw it as a mark.`,
  }),
  'stretch-count': ({ piece, line, wrote, takes }) => ({
    says: `${named(line)} of ${named(piece)} is crossed into ${counted(takes, 'stretch', 'stretches')}, and ${counted(wrote, 'direction')} ${wrote === 1 ? 'is' : 'are'} given.`,
    remedy: `Give one direction for the whole of ${named(line)}, or ${takes} for its stretches, from its beginning to its end.`,
  }),
  overlap: ({ piece, line, other }) => ({
    says: `On ${named(piece)}, ${named(line)} lies on ${named(other)}, so that one of the two is too many.`,
    remedy: `Leave one of them out, or move ${named(line)}.`,
  }),
  'window-off': ({ piece, line }) => ({
    says: `The window ${named(line)} is not on the paper of ${named(piece)}.`,
    remedy: `Check its size, and the point that it stands at.`,
  }),
  'window-edge': ({ piece, line }) => ({
    says: `The window ${named(line)} breaks through the edge of ${named(piece)}.`,
    remedy: `Make it smaller or move it; to cut a piece out of an edge, write it under \`away\`.`,
  }),
  'nothing-left': ({ piece }) => ({
    says: `No paper is left of ${named(piece)} when all that is cut away is gone.`,
    remedy: `Check the sizes of what is cut away from ${named(piece)}.`,
  }),
  'falls-apart': ({ piece, parts }) => ({
    says: `${named(piece)} is cut into ${parts} parts that nothing holds together.`,
    remedy: `End a cut short of the edge, or write the parts as pieces of their own.`,
  }),
  'too-many-panels': ({ piece, count, before, limit }) => ({
    says: `${named(piece)} is divided into ${counted(count, 'panel')}${before > 0 ? `, the pieces before it into ${before}` : ''}; at most ${limit} can be folded in one card.`,
    remedy: `Take fewer lines or a smaller count.`,
  }),
};
