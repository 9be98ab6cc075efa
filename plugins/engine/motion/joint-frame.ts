import type { Assembly, HingeJoint, Joint, LaidJoint } from '../assembly/index.ts';
import {
  compose,
  laidOn,
  minus,
  type Placement,
  plus,
  rotationAbout,
  type Turn,
  times,
  turnBy,
  ZERO,
} from '../geometry/index.ts';
import type { Line, PinJoin, SlideJoin, SlotJoin } from '../spec/index.ts';
import { hungFrom } from './hung.ts';
import type { PoseSettings } from './pose-settings.ts';
import { slippedOver } from './slipped.ts';

/** Half-slits pushed into each other stand square, unless a pose turns the slit like a crease. */
const SQUARE = 90;

/**
 * Where a joint puts its panel `a`, in the space of its panel `b`.
 *
 * @param pressed leave the height of foam out of account
 */
export function frameOf(joint: Joint, assembly: Assembly, settings: PoseSettings, pressed = false): Placement {
  switch (joint.is) {
    case 'hinge':
      return hingeFrame(joint, settings);
    case 'slip':
      return slippedOver(joint, assembly, (hinge) => hingeFrame(hinge, settings));
    case 'hang':
      return hungFrom(joint, assembly);
    case 'rest':
      throw new RangeError('what rests upon a panel is not held by it');
    default:
      return laidFrame(joint, assembly, settings, pressed);
  }
}

/** `b` turns about the crease by plus its angle against `a`, so `a` by minus it against `b`. */
export function hingeFrame({ hinge }: HingeJoint, settings: PoseSettings): Placement {
  const degrees = settings.turnOf(hinge);
  if (degrees === undefined) throw new RangeError(`\`${hinge.crease}\` has no angle in this pose`);
  return rotationAbout(hinge.from, hinge.to, -degrees);
}

function laidFrame({ join }: LaidJoint, assembly: Assembly, settings: PoseSettings, pressed: boolean): Placement {
  switch (join.is) {
    case 'glue':
      return laidOn(join, pressed ? ZERO : (join.foam?.mm ?? ZERO));
    case 'pin':
      return laidOn({ ...join, turn: turnOfPin(join, settings) });
    case 'slide':
      return laidOn({ ...join, q: slidTo(join, settings) });
    case 'slot':
      return compose(laidOn(join), stoodOn(join, assembly, settings));
  }
}

function turnOfPin({ part, turn }: PinJoin, settings: PoseSettings): Turn {
  const further = turnBy(settings.pinOf(part.piece));
  const cos = minus(times(turn.cos, further.cos), times(turn.sin, further.sin));
  const sin = plus(times(turn.sin, further.cos), times(turn.cos, further.sin));
  return turn.rounded || further.rounded ? { cos, sin, rounded: true } : { cos, sin };
}

function slidTo({ q, along, part }: SlideJoin, settings: PoseSettings): SlideJoin['q'] {
  const out = settings.slideOf(part.piece)?.mm ?? ZERO;
  const [x, y] = [plus(q.x, times(out, along.x)), plus(q.y, times(out, along.y))];
  return q.rounded || along.rounded ? { x, y, rounded: true } : { x, y };
}

/** The turn of a slotted part about its own slit, before it is laid with the slit on the other's. */
function stoodOn(join: SlotJoin, assembly: Assembly, settings: PoseSettings): Placement {
  const piece = join.part.piece;
  const slit = assembly.card.pieces.find(({ name }) => name === piece)?.lines.find(isCalled(join.line));
  const stated = settings.statedFor(piece, join.line);
  const degrees = typeof stated === 'number' ? stated : SQUARE;
  const end = slit?.to ?? { x: join.p.x, y: plus(join.p.y, turnBy(0).cos) };
  return rotationAbout(slit?.from ?? join.p, end, degrees);
}

function isCalled(name: string): (line: Line) => boolean {
  return (line) => line.name === name;
}
