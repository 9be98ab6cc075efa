import type { Outline, PathEdge } from '../geometry/index.ts';
import type { Region } from '../spec/index.ts';
import { type Form, formOf, nearly } from './drawings-forms.ts';
import { acrossFrom, endPlace } from './drawings-lines.ts';
import { sayMeasure } from './drawings-measures.ts';
import { sayName } from './drawings-names.ts';
import { sayPoint, type Telling, zeroSide } from './drawings-points.ts';

/** A form as it follows its name: "a circle with a diameter of 2 in", "a rectangle 2 in wide and 3 in high". */
export function sayForm(form: Form, { system }: Telling): string {
  const say = (mm: Form['width']): string => sayMeasure(mm, false, system);
  const size = `${say(form.width)} wide and ${say(form.height)} high`;
  switch (form.is) {
    case 'circle':
      return `a circle with a diameter of ${say(form.width)}`;
    case 'ellipse':
      return `an ellipse ${size}`;
    case 'rounded':
      return `${size}, with round corners`;
    case 'rectangle':
      return `a rectangle ${size}`;
    case 'path':
      return `a shape ${size}`;
  }
}

/** The rest of what must be known of a form: the radius of its corners. */
export function sayRadius(form: Form, { system }: Telling): readonly string[] {
  return form.is === 'rounded' ? [`The radius of its corners is ${sayMeasure(form.radius, false, system)}.`] : [];
}

/** Where a region lies, after it was named: its centre, or two of its edges; for a path, how it runs. */
export function sayWhere(outline: Outline, telling: Telling): readonly string[] {
  const form = formOf(outline);
  if (form.is === 'path') return sayPath(outline, telling);
  if (form.is === 'circle' || form.is === 'ellipse') {
    const centre = { x: form.left.add(form.width.div(2)), y: form.top.add(form.height.div(2)) };
    return [`Its centre is at ${sayPoint(centre, telling)}.`];
  }
  const { piece, system, hand } = telling;
  const side = zeroSide(hand);
  const edge = acrossFrom(side === 'left' ? form.left : form.left.add(form.width), piece, hand);
  const across = sayMeasure(edge, false, system);
  const down = sayMeasure(form.top, false, system);
  return [`Its ${side} edge is at ${across} across, its top edge at ${down} down.`, ...sayRadius(form, telling)];
}

/** Along a path, edge by edge, back to where it began. */
export function sayPath(outline: Outline, telling: Telling): readonly string[] {
  const [first] = outline;
  if (first === undefined) return [];
  return [
    `Start at ${sayPoint(first.from, telling)}.`,
    ...outline.flatMap((edge, i) => sayEdge(edge, i === outline.length - 1, telling)),
  ];
}

function sayEdge(edge: PathEdge, isLast: boolean, telling: Telling): readonly string[] {
  const end = isLast ? 'back to the start' : `to ${sayPoint(edge.to, telling)}`;
  if (edge.is === 'line') return [`Go straight ${end}.`];
  const { centre, rx, ry, clockwise } = edge;
  const say = (mm: Form['width']): string => sayMeasure(mm, centre.rounded === true, telling.system);
  const turn = clockwise ? 'clockwise' : 'anticlockwise';
  const size = nearly(rx, ry)
    ? `of radius ${say(rx)}`
    : `of an ellipse ${say(rx.mul(2))} wide and ${say(ry.mul(2))} high`;
  return [`Go ${turn} ${end}, along an arc ${size}.`, `The centre of that arc is at ${sayPoint(centre, telling)}.`];
}

/** What is trimmed off: a corner by its size, else as any region. */
export function sayAway({ name, outline }: Pick<Region, 'name' | 'outline'>, telling: Telling): readonly string[] {
  const form = formOf(outline);
  const corner = outline.map(({ from }) => from).find((point) => endPlace(point, telling.piece) === 'corner');
  if (form.is === 'rectangle' && corner !== undefined) {
    const { width, height } = form;
    const say = (mm: Form['width']): string => sayMeasure(mm, false, telling.system);
    return [`Cut away ${sayPoint(corner, telling)}, ${say(width)} wide and ${say(height)} high.`];
  }
  return [`Cut away the ${sayName(name)}, ${sayForm(form, telling)}.`, ...sayWhere(outline, telling)];
}
