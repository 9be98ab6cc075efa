import Fraction from 'fraction.js';
import { Length } from '../units/index.ts';
import type { SlideSpec } from './assembly-specs.ts';
import type { Line, PlaneTurn, SlideJoin } from './card-types.ts';
import { boxAround, commonOf, lengthOf, type Making, type Pair, textOfJoin, turnSaid } from './join-making.ts';
import { AS_DRAWN, ownDirection, turnBetween, turnedOver } from './laying.ts';
import { centreOf } from './panel-box.ts';
import { cross, dot, isRounded, middleOf, minus, onGrid, plus, point, times, unitOf, type Vector } from './plane.ts';
import { lineNames } from './references.ts';
import { suggest } from './report.ts';

/**
 * A slider with its way: at zero it lies with its middle between its outer slits. It goes to either side until only `keep` of it is left
 * beyond the slit that it draws towards; where it is too short for that, `start` is more than `end`.
 */
export function makeSlide(spec: SlideSpec, pair: Pair, making: Making): SlideJoin | undefined {
  const { part, partSide, ontoSide } = pair;
  const keep = lengthOf(spec.keep, making);
  const said = turnSaid(spec.turn, making);
  const cuts = cutsOf(spec, pair, making);
  const [first] = cuts ?? [];
  if (keep === undefined || said === undefined || cuts === undefined || first === undefined) return undefined;
  const slit = unitOf(minus(first.to, first.from));
  if (!areParallel(cuts, spec, making)) return undefined;
  const along = wayAcross(slit);
  const over = turnedOver(partSide, ontoSide);
  const turn = spec.turn ? said : squareTo(slit);
  const middles = cuts.map((cut) => middleOf(cut)).sort((a, b) => dot(a, along).compare(dot(b, along)));
  const [near = middleOf(first), far = near] = [middles[0], middles.at(-1)];
  const gap = dot(minus(far, near), along);
  const spare = extent(part.piece, ownDirection(along, over, turn))
    .sub(gap)
    .div(2)
    .sub(keep.mm);
  const rounded = isRounded(along) || turn.rounded === true;
  const travel = Length.fromMm(rounded ? onGrid(spare.valueOf()) : spare);
  return {
    is: 'slide',
    ...commonOf(spec, pair),
    p: centreOf(boxAround(part)),
    q: plus(near, times(minus(far, near), new Fraction(1, 2))),
    turn,
    partSide,
    ontoSide,
    along,
    through: cuts.map(({ name }) => name),
    shows: spec.shows,
    keep,
    start: travel.negated(),
    end: travel,
  };
}

/** The cuts by name; the name of a family means all its members. */
function cutsOf(spec: SlideSpec, { onto: { piece } }: Pair, { report }: Making): Line[] | undefined {
  const cuts: Line[] = [];
  let whole = spec.through.length > 0;
  for (const { node, path } of spec.through) {
    const named = piece.lines.filter(({ name }) => name === node.text);
    const found = named.length > 0 ? named : piece.lines.filter(({ family }) => family === node.text);
    const wrong = found.find(({ does }) => does !== 'cut');
    if (found.length > 0 && wrong === undefined) {
      cuts.push(...found.filter((cut) => !cuts.includes(cut)));
      continue;
    }
    whole = false;
    const known = piece.lines.filter(({ does }) => does === 'cut').map(({ name }) => name);
    const takes = known.length > 0 ? `cuts of \`${piece.name}\`: ${known.join(', ')}` : `cuts of \`${piece.name}\``;
    if (wrong) {
      const remedy = `\`${node.text}\` is a ${wrong.does}. Write it under \`cuts\` of \`${piece.name}\`.`;
      report.at(node.place, path, { code: 'not-a-cut', wrote: node.text, takes, remedy });
    } else {
      const other = lineNames(piece).includes(node.text);
      const remedy = other
        ? `\`${node.text}\` is no cut. Add one under \`cuts\` of \`${piece.name}\`.`
        : suggest(node.text, known, `Add \`${node.text}\` under \`cuts\` of \`${piece.name}\`.`);
      report.at(node.place, path, { code: other ? 'not-a-cut' : 'unknown-line', wrote: node.text, takes, remedy });
    }
  }
  return whole ? cuts : undefined;
}

/** Slits that a strip goes straight through run the same way. */
function areParallel(cuts: readonly Line[], spec: SlideSpec, { report }: Making): boolean {
  const [first] = cuts;
  if (first === undefined) return false;
  const slit = unitOf(minus(first.to, first.from));
  const askew = cuts.find((cut) => {
    const turned = cross(slit, unitOf(minus(cut.to, cut.from)));
    return isRounded(slit) || isRounded(cut.from) ? Math.abs(turned.valueOf()) > ASKEW : !turned.equals(0);
  });
  if (askew === undefined) return true;
  const [word] = spec.through;
  report.at(word?.node.place ?? spec.place, word?.path ?? spec.path, {
    code: 'slits-askew',
    wrote: textOfJoin(spec),
    takes: 'cuts that run the same way',
    remedy: `\`${askew.name}\` runs another way than \`${first.name}\`. A strip slides straight, so lay the cuts side by side.`,
  });
  return false;
}

/** Sine of the angle up to which rounded cuts run the same way. */
const ASKEW = 1e-9;

/** Square to the slits: to the right, or straight down. */
function wayAcross(slit: Vector): Vector {
  const across = point(slit.y, slit.x.neg(), isRounded(slit));
  const leftwards = across.x.s < 0n && !across.x.equals(0);
  const upwards = across.x.equals(0) && across.y.s < 0n;
  return leftwards || upwards ? point(across.x.neg(), across.y.neg(), isRounded(slit)) : across;
}

/** A slider lies as it is drawn where the slits run along the sides of the drawing, and is turned with slanted ones. */
function squareTo(slit: Vector): PlaneTurn {
  if (slit.x.equals(0) || slit.y.equals(0)) return AS_DRAWN;
  return turnBetween(point(new Fraction(0), new Fraction(1)), slit.y.s < 0n ? times(slit, new Fraction(-1)) : slit);
}

/** How long a piece is in a direction of its drawing: from corner to corner of the rectangle round it. */
function extent({ width, height }: { width: Length; height: Length }, direction: Vector): Fraction {
  return width.mm.mul(direction.x.abs()).add(height.mm.mul(direction.y.abs()));
}
