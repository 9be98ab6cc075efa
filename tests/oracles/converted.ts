import { all, create } from 'mathjs';

const math = create(all ?? {});

/** A measurement in another unit by the tables of mathjs, which knows nothing of ours. Double precision. */
export function converted(value: number, from: string, to: string): number {
  return math.unit(value, from).toNumber(to);
}

/** A mixed number, fraction or decimal in plain digits as mathjs evaluates it: `5 1/2` as `(5 + 1/2)`. */
export function evaluated(text: string): number {
  return Number(math.evaluate(text.trim().replace(/\s+/g, ' + ')));
}

/** Grams per square metre of a pound of paper: 500 sheets of so many inches weigh it. */
export function basisFactor(width: number, height: number): number {
  return math.evaluate(`1 lb / (500 * ${width} inch * ${height} inch)`).toNumber('g/m^2');
}
