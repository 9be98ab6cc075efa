/**
 * Words of lessons as makers write them, for `readLesson`.
 *
 * Chosen by hand from how lessons are written; common practice, no source. All in lower case.
 */

const words = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/u));

/** They bring a sheet of a stated size. */
export const CUTTING = words(
  'cut cuts cutting trim trims trimmed trimming start begin take use need grab make prepare',
);

/** They bring positions of creases. */
export const SCORING = words('score scores scored scoring scorelines scoreline crease creases creased creasing');

export const FOLDING = words('fold folds folded folding foldline foldlines');

/** What is made of the sheets, not a sheet. */
export const FINISHING = words('finished closes closed makes making gives yields final completed opens');

/** What a card is put into: its size is not the card's. */
export const OUTSIDE = words('envelope envelopes mailer mailers');

/** Words for a side of a sheet, after `long`, `short` or its length. */
export const SIDE_WORDS = words('side sides edge edges');
export const LONG = words('long longer longest');
export const SHORT = words('short shorter shortest');

/** Another quarter turn: what is scored next is measured along the other side. */
export const TURNING = words('turn turned rotate rotated rotating turning');

/** They fold to and fro, each crease the other way than the one before. */
export const TO_AND_FRO = words(
  'accordion accordion-fold accordion-style concertina zigzag zig-zag pleat pleats pleated pleating fanfold fan-fold alternate alternating alternately',
);

/** Pieces that lessons name, and what they are called in a recipe. */
export const PIECE_NAMES: ReadonlyMap<string, string> = new Map([
  ...[
    ...['base', 'front', 'back', 'mat', 'layer', 'liner', 'insert', 'strip', 'bridge', 'pocket', 'tag', 'band', 'lid'],
    ...['box', 'window', 'frame', 'cover', 'flap', 'background', 'sentiment', 'backing', 'border', 'tab', 'slider'],
    ...['stopper', 'topper', 'bar', 'hinge', 'sleeve', 'panel', 'inlay', 'gate'],
  ].map((name) => [name, name] as const),
  ['mats', 'mat'],
  ['matting', 'mat'],
  ['layers', 'layer'],
  ['strips', 'strip'],
  ['panels', 'panel'],
  ['bars', 'bar'],
  ['tags', 'tag'],
  ['bands', 'band'],
  ['pockets', 'pocket'],
  ['flaps', 'flap'],
  ['liners', 'liner'],
  ['inserts', 'insert'],
  ['bases', 'base'],
  ['cardbase', 'base'],
  ['card-base', 'base'],
]);

/** A name that gives way to a more telling one beside it: a front panel is the front. */
export const PLAIN_NAMES = words('panel layer piece');

/** Things that can be counted before a size: `four strips 5 x 1 1/4`. */
export const COUNTABLE = words(
  'pieces sheets strips panels mats layers bars tags bands pockets flaps squares rectangles',
);

export const COUNTS: ReadonlyMap<string, number> = new Map(
  ['two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'].map((word, index) => [
    word,
    index + 2,
  ]),
);

/** Which crease is meant, counted from the left or top end: from 0, or from the end below 0. */
export const ORDINALS: ReadonlyMap<string, number> = new Map([
  ['first', 0],
  ['1st', 0],
  ['second', 1],
  ['2nd', 1],
  ['third', 2],
  ['3rd', 2],
  ['fourth', 3],
  ['4th', 3],
  ['fifth', 4],
  ['sixth', 5],
  ['last', -1],
]);

/** Every crease, and every one that nothing has been said of. */
export const EVERY = words('both all each every');
export const OTHERS = words('other others rest remaining');

/** Words that say nothing about sheet and scores. */
export const FILLER = words(
  `a an the this that these those it its them they you your my our we i to of at on in into from with and then now next
  so is are be been being will should can as by for or also again finally first firstly secondly lastly here there just
  please up down out piece pieces sheet sheets cardstock card cards paper papers stock strip strips panel rectangle
  rectangles square squares measuring measures measure size sized sizes inch inches line lines mark marks along across
  each one ones place using carefully firmly nice nicely crisp well step steps both score scores fold folds way which
  another second third extra side sides edge edges left top end ends position positions dimension dimensions
  board blade tool trimmer folder bone scoreboard cut cutting let make get going begin start
  use take need grab prepare like style starting beginning flap flaps panels gate gates`,
);

/** Words that go before a sheet which is there already. */
export const KNOWN_SHEET = words('it this that the your');
