import Fraction from 'fraction.js';
import { Length } from '../units/index.ts';
import type { FoamSpec, GlueSpec, HangSpec, JoinSpec, PinSpec, RestSpec, SlipSpec } from './assembly-specs.ts';
import type { FoamTape, GlueJoin, HangJoin, Join, Laying, PinJoin, RestJoin, SlipJoin } from './card-types.ts';
import { edgePoint, edgeTouched } from './edge-points.ts';
import {
  commonOf,
  findPair,
  lengthOf,
  lengthOr,
  lineOf,
  type Making,
  middleOf,
  type Pair,
  pointOf,
  turnSaid,
} from './join-making.ts';
import { seen, turnBetween, turnedOver } from './laying.ts';
import { makeSlide } from './make-slide.ts';
import { makeSlot } from './make-slot.ts';
import { minus, pointAlong } from './plane.ts';

/** Play between a lid and its box where the fold does not say: common practice, no source. */
export const USUAL_PLAY = Length.fromInches(new Fraction(1, 32));

/** One join with its points and lengths; undefined after its problems have been reported. */
export function makeJoin(spec: JoinSpec, making: Making): Join | undefined {
  const pair = findPair(spec, making);
  if (pair === undefined) return undefined;
  switch (spec.is) {
    case 'glue':
      return makeGlue(spec, pair, making);
    case 'pin':
      return makePin(spec, pair, making);
    case 'slide':
      return makeSlide(spec, pair, making);
    case 'slot':
      return makeSlot(spec, pair, making);
    case 'slip':
      return makeSlip(spec, pair, making);
    case 'rest':
      return makeRest(spec, pair, making);
    case 'hang':
      return makeHang(spec, pair, making);
  }
}

function makeGlue(spec: GlueSpec, pair: Pair, making: Making): GlueJoin | undefined {
  const tape = spec.foam ? makeTape(spec.foam, making) : NO_TAPE;
  const lying = spec.lay ? layLine(spec, pair, making) : layPoint(spec, pair, making);
  if (tape === undefined || lying === undefined) return undefined;
  const own = tape.layer.times(tape.layers);
  const high = own.plus(heightBetween(pair));
  const { partSide, ontoSide } = pair;
  const foam = high.isZero ? undefined : high;
  const join = { is: 'glue', ...commonOf(spec, pair), ...lying, partSide, ontoSide, foam } as const;
  return own.isZero ? join : { ...join, tape };
}

const NO_TAPE: FoamTape = { stock: '', layer: Length.zero, layers: 0 };

/** More layers of foam on each other than this are a slip of the pen. */
const MOST_FOAM_LAYERS = 20;

function makeTape({ stock, high, layers: spec, place, path }: FoamSpec, making: Making): FoamTape | undefined {
  const layer = making.sizes.height(high);
  const layers = spec ? making.sizes.number(spec) : new Fraction(1);
  if (layer === undefined || layers === undefined) return undefined;
  if (layers.d === 1n && layers.gte(1) && layers.lte(MOST_FOAM_LAYERS)) {
    return { stock, layer, layers: layers.valueOf() };
  }
  making.report.at(spec?.written?.node.place ?? place, spec?.written?.path ?? path, {
    code: 'not-whole',
    wrote: spec?.text ?? '',
    takes: `a whole number of layers from 1 to ${MOST_FOAM_LAYERS}`,
    remedy: 'Write how many layers of foam lie on each other, as `2`.',
  });
  return undefined;
}

/** Foam and board have their height on the side of their back, so it counts where that side is stuck. */
export function heightBetween({ part, onto, partSide, ontoSide }: Pair): Length {
  const heights = [
    partSide === 'back' ? part.piece.thick : undefined,
    ontoSide === 'back' ? onto.piece.thick : undefined,
  ];
  return Length.sum(heights.flatMap((height) => height ?? []));
}

type Lying = Pick<Laying, 'p' | 'q' | 'turn'> & Pick<GlueJoin, 'laid'>;

/** Line on line: start on start, `after` further on, and both running the same way. */
function layLine(spec: GlueSpec, { part, onto, partSide, ontoSide }: Pair, making: Making): Lying | undefined {
  const { lay } = spec;
  const after = lengthOf(spec.after, making);
  const line = lay && lineOf(part, lay.line, making.report);
  const along = lay && lineOf(onto, lay.along, making.report);
  if (lay === undefined || after === undefined || line === undefined || along === undefined) return undefined;
  const over = turnedOver(partSide, ontoSide);
  const turn = turnBetween(seen(minus(line.to, line.from), over), minus(along.to, along.from));
  const laid = { line: lay.line.node.text, along: lay.along.node.text, after };
  return { p: line.from, q: pointAlong(along, after.mm), turn, laid };
}

/** Point on point; without points, middle on middle. */
function layPoint(spec: GlueSpec, { part, onto }: Pair, making: Making): Lying | undefined {
  const turn = turnSaid(spec.turn, making);
  const { match } = spec;
  const p = match ? pointOf(part, match.point, making) : middleOf(part, spec.part, making.report);
  const q = match ? pointOf(onto, match.to ?? match.point, making) : middleOf(onto, spec.onto, making.report);
  return p && q && turn && { p, q, turn, laid: undefined };
}

function makePin(spec: PinSpec, pair: Pair, making: Making): PinJoin | undefined {
  const { part, onto, partSide, ontoSide } = pair;
  const turn = turnSaid(spec.turn, making);
  const p = spec.by ? pointOf(part, spec.by, making) : middleOf(part, spec.part, making.report);
  const q = spec.at ? pointOf(onto, spec.at, making) : middleOf(onto, spec.onto, making.report);
  return p && q && turn && { is: 'pin', ...commonOf(spec, pair), p, q, turn, partSide, ontoSide };
}

function makeSlip(spec: SlipSpec, pair: Pair, making: Making): SlipJoin | undefined {
  const play = lengthOr(spec.play, making, USUAL_PLAY);
  return play && { is: 'slip', ...commonOf(spec, pair), play };
}

function makeRest(spec: RestSpec, pair: Pair, making: Making): RestJoin | undefined {
  const away = lengthOf(spec.away, making);
  const touches = edgeTouched(pair.part, spec.part, making.report);
  const line = spec.from && lineOf(pair.onto, spec.from, making.report);
  if (away === undefined || touches === undefined || (spec.from && line === undefined)) return undefined;
  const from = spec.from && line && { line: spec.from.node.text, start: line.from, end: line.to };
  return { is: 'rest', ...commonOf(spec, pair), touches, from, away };
}

function makeHang(spec: HangSpec, pair: Pair, making: Making): HangJoin | undefined {
  const thread = lengthOf(spec.thread, making);
  const after = spec.after && making.sizes.length(spec.after);
  const held = edgePoint(pair.part, spec.part, undefined, making.report);
  const fixed = edgePoint(pair.onto, spec.onto, after, making.report);
  if (thread === undefined || held === undefined || fixed === undefined || (spec.after && !after)) return undefined;
  const common = commonOf(spec, pair);
  return {
    is: 'hang',
    ...common,
    part: { ...common.part, part: held.panel },
    onto: { ...common.onto, part: fixed.panel },
    p: held.at,
    q: fixed.at,
    away: fixed.out,
    thread,
  };
}
