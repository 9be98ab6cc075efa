import type { Point } from '../geometry/index.ts';
import { Length } from '../units/index.ts';
import type { JoinSpec, LineWord, RefSpec } from './assembly-specs.ts';
import type { Join, PaperSide, PlaneTurn } from './card-types.ts';
import type { Expression } from './expression.ts';
import { type Found, findPanel, type NamedPieces, type Role } from './find-references.ts';
import { AS_DRAWN, turnOf } from './laying.ts';
import { boxOf, centreOf, edgeAt, type PanelBox } from './panel-box.ts';
import { partKey } from './part-key.ts';
import { plus, point, type Segment, ZERO } from './plane.ts';
import { pointIn } from './point-on.ts';
import { lineNames, linesNamed, type PointSpec, type Sizes } from './references.ts';
import { type Report, suggest } from './report.ts';

/** What joins are made from. */
export interface Making {
  readonly pieces: NamedPieces;
  readonly sizes: Sizes;
  readonly report: Report;
}

/** Both panels of a join, and the sides that meet. */
export interface Pair {
  readonly part: Found;
  readonly onto: Found;
  readonly partSide: PaperSide;
  readonly ontoSide: PaperSide;
}

const RECEIVING: Readonly<Record<JoinSpec['is'], string>> = {
  glue: 'onto',
  pin: 'to',
  slide: 'in',
  slip: 'over',
  slot: 'into',
  rest: 'upon',
  hang: 'from',
};

/** The two panels of a join: unless said, the back of the part meets the face of what receives it. */
export function findPair(spec: JoinSpec, { pieces, report }: Making): Pair | undefined {
  const partSide = spec.part.side ?? 'back';
  const ontoSide = spec.onto.side ?? 'face';
  const part = findPanel(spec.part, roleOf(partSide), pieces, report);
  const onto = findPanel(spec.onto, roleOf(ontoSide), pieces, report);
  if (part === undefined || onto === undefined) return undefined;
  const whole = part.ref.part.is === 'whole' || onto.ref.part.is === 'whole';
  const same = whole || partKey(part.ref.part) === partKey(onto.ref.part);
  if (part.piece !== onto.piece || !same) return { part, onto, partSide, ontoSide };
  report.at(spec.onto.node.place, spec.onto.path, {
    code: 'joined-to-itself',
    wrote: textOfJoin(spec),
    takes: 'two panels',
    remedy: `\`${part.piece.name}\` cannot hold itself. Name two of its panels, or another piece after \`${RECEIVING[spec.is]}\`.`,
  });
  return undefined;
}

/** A piece is replaced by another card's back and edges, or by what lies on top of it. */
function roleOf(side: PaperSide): Role {
  return side === 'face' ? 'top' : 'body';
}

/** As a maker reads it: `back of disc.right onto back of front`. */
export function textOfJoin(spec: JoinSpec): string {
  const said = (ref: RefSpec): string => (ref.side ? `${ref.side} of ${ref.node.text}` : ref.node.text);
  return `${said(spec.part)} ${RECEIVING[spec.is]} ${said(spec.onto)}`;
}

/** A length of a join; a problem with it is reported where it is worked out. */
export function lengthOr(expression: Expression | undefined, { sizes }: Making, otherwise: Length): Length | undefined {
  return expression ? sizes.length(expression) : otherwise;
}

export function lengthOf(expression: Expression | undefined, making: Making): Length | undefined {
  return lengthOr(expression, making, Length.zero);
}

/** The box that edges, corners and the centre are taken from: that of the panel where names tell it, else of the piece. */
export function boxAround({ piece, ref }: Found): PanelBox {
  return boxOf(piece, ref.part) ?? { corner: point(ZERO, ZERO), width: piece.width, height: piece.height };
}

/** A line that a join speaks of: an edge of the panel, or any other line of its piece. */
export function lineOf(found: Found, word: LineWord, report: Report): Segment | undefined {
  const name = word.node.text;
  const edge = edgeAt(boxAround(found), name);
  if (edge) return edge;
  const named = linesNamed(found.piece, name);
  const [only] = named;
  if (only && named.length === 1) return only.line;
  const takes = `a line of \`${found.piece.name}\`: ${lineNames(found.piece).join(', ')}`;
  if (named.length > 1) {
    const remedy = `Write ${named.map((line) => `\`${line.name}\``).join(' or ')}.`;
    report.at(word.node.place, word.path, { code: 'ambiguous-line', wrote: name, takes, remedy });
  } else {
    const remedy = suggest(name, lineNames(found.piece), `\`${found.piece.name}\` has no line called \`${name}\`.`);
    report.at(word.node.place, word.path, { code: 'unknown-line', wrote: name, takes, remedy });
  }
  return undefined;
}

/**
 * A point that a join speaks of, on the drawing of the piece. Corners, edges, the centre and `[across, down]` are those of the
 * panel; a point on a line is found along the line.
 */
export function pointOf(found: Found, spec: PointSpec, { sizes, report }: Making): Point | undefined {
  const box = boxAround(found);
  if (spec.is === 'on') {
    const node = { kind: 'text', text: spec.line, place: spec.place, quoted: false } as const;
    const line = lineOf(found, { node, path: spec.path }, report);
    return line && pointIn(box, spec, () => line, sizes);
  }
  const within = pointIn(box, spec, () => undefined, sizes);
  return within && plus(within, box.corner);
}

/** The middle of a panel, which must be one that names tell the size of. */
export function middleOf(found: Found, spec: RefSpec, report: Report): Point | undefined {
  const box = boxOf(found.piece, found.ref.part);
  if (box) return centreOf(box);
  report.at(spec.node.place, spec.path, {
    code: 'no-centre',
    wrote: spec.node.text,
    takes: 'a piece or a band, when nothing says where the part lies',
    remedy: `Say where: \`lay: LINE along LINE\` or \`match: POINT to POINT\`. Only of a whole piece or a band can the middle be told.`,
  });
  return undefined;
}

/** What every join knows. */
export function commonOf(
  spec: JoinSpec,
  { part, onto }: Pair,
): Pick<Join, 'part' | 'onto' | 'implied' | 'text' | 'place' | 'path'> {
  const { place, path } = spec;
  return { part: part.ref, onto: onto.ref, implied: false, text: textOfJoin(spec), place, path };
}

/** Degrees clockwise on the receiver's drawing. */
export function turnSaid(expression: Expression | undefined, { sizes }: Making): PlaneTurn | undefined {
  const degrees = expression && sizes.angle(expression);
  return expression === undefined ? AS_DRAWN : degrees && turnOf(degrees);
}
