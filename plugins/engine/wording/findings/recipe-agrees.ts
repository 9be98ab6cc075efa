import { inSeries, named, type Sentences } from './sentence.ts';

export const recipeAgrees: Sentences<'recipe-agrees'> = {
  agrees: ({ piece, width, height, scores }, words) => ({
    says: `The recipe makes ${named(piece)}: cut ${words.size(width, height)}${scores.length === 0 ? '' : `, score at ${words.lengths(scores)}`}.`,
  }),
  'sheet-side': ({ piece, wrote, takes, by, width, height }, words) => ({
    says: `The recipe cuts ${named(piece)} ${words.length(by)} too ${wrote.moreThan(takes) ? 'large' : 'small'}: a side of ${words.length(wrote)} should be ${words.length(takes)}.`,
    remedy: `Cut ${words.size(width, height)}, or change the sizes of the fold.`,
  }),
  'score-position': ({ wrote, takes, by, scores }, words) => ({
    says: `The recipe scores at ${words.length(wrote)}; for this fold it should be ${words.length(takes)}, ${words.length(by)} ${wrote.moreThan(takes) ? 'less' : 'more'}.`,
    remedy: `Score at ${words.lengths(scores)}.`,
  }),
  'score-count': ({ piece, wrote, takes }, words) => ({
    says: `The recipe scores at ${words.lengths(wrote)}; ${named(piece)} has ${takes.length === 1 ? 'a crease' : 'creases'} at ${words.lengths(takes)}.`,
    remedy: takes.length === 0 ? `Leave the scores out.` : `Score at ${words.lengths(takes)}.`,
  }),
  'score-direction': ({ at, wrote, takes }, words) => ({
    says: `The recipe folds the score at ${words.length(at)} as a ${wrote}; in this fold it is a ${takes}, seen from the same face as the others.`,
    remedy: `Write \`${takes}\` after that score.`,
  }),
  'other-face': ({ piece }) => ({
    says: `The recipe folds every score of ${named(piece)} the other way. That is the same card only if the paper is turned over first.`,
    remedy: `Say which face is up, or change valley to mountain and mountain to valley.`,
  }),
  'other-side': ({ piece, wrote, takes }, words) => ({
    says: `The recipe counts its scores along the ${words.length(wrote)} side; ${named(piece)} is scored along the ${words.length(takes)} side.`,
    remedy: `Add \`along: ${words.length(takes)}\` to the recipe, or turn the fold.`,
  }),
  'side-unknown': ({ side, width, height }, words) => ({
    says: `The recipe scores along ${side}, but the sheet is ${words.size(width, height)} and has no such side.`,
    remedy: `Write \`along: ${words.length(width)}\` or \`along: ${words.length(height)}\`.`,
  }),
  'score-beyond': ({ at, side, other }, words) => ({
    says: `The score at ${words.length(at)} lies beyond the ${words.length(side)} side that it is said to run along.`,
    remedy: at.lessThan(other)
      ? `The other side is ${words.length(other)} long: did you mean to score along that?`
      : `No side of this sheet is long enough: check the score and the sheet.`,
  }),
  'scores-descend': ({ at, before }, words) => ({
    says: at.equals(before)
      ? `Two scores stand at ${words.length(at)}. Scores are counted from one end of the sheet, not each from its own.`
      : `The score at ${words.length(at)} comes after the one at ${words.length(before)}. Scores are counted from one end, each further on than the last.`,
    remedy: `Check the two numbers, and write the scores in the order in which they are met.`,
  }),
  'piece-unknown': ({ piece, pieces }) => ({
    says: `${piece === '' ? 'A step of the recipe' : `The recipe's ${named(piece)}`} was not compared: the fold has no such piece. It has ${inSeries(pieces.split(', ').map(named))}.`,
    remedy: `Name the piece in the step, as \`piece: ${pieces.split(', ')[0] ?? ''}\`.`,
  }),
};
