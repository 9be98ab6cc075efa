/**
 * Words around `in`, which is a unit in `5 1/2 in wide` and a preposition in `5 in a row`.
 *
 * Chosen by hand from how lessons are written; no source.
 */

/** After `in` they make it a preposition, whatever stands before. */
export const DETERMINERS: ReadonlySet<string> = new Set(
  `a an the this that these those each every all both either neither any some no one two three four five six seven eight
  nine ten half my your his her its our their whose which what other another total turn order place front case row rows
  pairs fact general advance addition particular`.split(/\s+/),
);

/** After a whole number and `in` they make it the unit: words of measuring, and words that no place or time starts with. */
export const MEASURING: ReadonlySet<string> = new Set(
  `wide width long length tall high height deep depth thick thickness across down square diagonal diameter radius
  strip panel circle sheet border margin gap overlap tab flap mark ruler mat window die template
  x by from apart above below beyond past off at on to and or of per with along
  less more smaller larger bigger longer shorter wider narrower taller deeper higher lower thicker thinner
  is are was were will so then than when where if but because until`.split(/\s+/),
);

/** Before a whole number they number something: `step 5 in`. */
export const COUNTED_BEFORE =
  /\b(?:steps?|pages?|figures?|fig\.?|no\.?|number|chapters?|parts?|versions?|rows?|columns?|layers?|pieces?|days?|weeks?|top|class|grade|room|item|line|lesson|round)\s+$/i;

/** Before a list of whole numbers they make it a list of measures: `score at 2, 4 and 6 in`. */
export const MEASURED_BEFORE = /\b(?:at|between|from|measure|measures|measuring|mark|marks)\s+$/i;

export const ARTICLE_BEFORE = /\b(?:a|an)\s+$/i;
