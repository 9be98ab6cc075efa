import Fraction from 'fraction.js';
import { expect } from 'vitest';
import type { Point } from '../../../plugins/engine/geometry/index.ts';
import { type Card, type Panel, type Panelling, panelsOf } from '../../../plugins/engine/index.ts';

type Ring = readonly { readonly x: number; readonly y: number }[];

/** What holds for every card: panels tile the paper and nothing else, and hinges lie between the panels that they name. */
export function expectSound(made: Card, squareMm?: number): Panelling {
  const panelling = panelsOf(made);
  const { panels, hinges } = panelling;
  expect(new Set(panels.map(({ name }) => name)).size).toBe(panels.length);
  for (const panel of panels) {
    expect(shoelace(panel.outline).compare(0)).toBe(1);
    for (const hole of panel.holes) expect(shoelace(hole).compare(0)).toBe(-1);
    expect(depth(panel, panel.inside)).toBe(1);
    const others = panels.filter((other) => other.piece === panel.piece && other !== panel);
    expect(others.filter((other) => depth(other, panel.inside) !== 0).map(({ name }) => name)).toEqual([]);
  }
  for (const hinge of hinges) {
    const [leftPoint, rightPoint] = besides(hinge.from, hinge.to);
    const at = (point: Point): string[] =>
      panels.filter((panel) => panel.piece === hinge.piece && depth(panel, point) === 1).map(({ name }) => name);
    expect({ crease: hinge.crease, left: at(leftPoint), right: at(rightPoint) }).toEqual({
      ...{ crease: hinge.crease, left: [hinge.left], right: [hinge.right] },
    });
  }
  if (squareMm !== undefined) expect(exactArea(panels).valueOf()).toBeCloseTo(squareMm, 6);
  return panelling;
}

/** Exact, of all panels without their holes, in square millimetres. */
export function exactArea(panels: readonly Panel[]): Fraction {
  return panels.reduce(
    (sum, { outline, holes }) => [outline, ...holes].reduce((all, ring) => all.add(shoelace(ring)), sum),
    new Fraction(0),
  );
}

/** Positive clockwise on the drawing. */
export function shoelace(ring: readonly Point[]): Fraction {
  return ring
    .reduce((sum, point, i) => {
      const next = ring[(i + 1) % ring.length] ?? point;
      return sum.add(point.x.mul(next.y)).sub(next.x.mul(point.y));
    }, new Fraction(0))
    .div(2);
}

/** A ten-thousandth of a millimetre to the left, and to the right, of a point of a stretch, looking along it. */
function besides(from: Point, to: Point): readonly [Point, Point] {
  const [x, y] = [from.x.mul(4).add(to.x.mul(3)).div(7), from.y.mul(4).add(to.y.mul(3)).div(7)];
  const [dx, dy] = [to.x.sub(from.x).valueOf(), to.y.sub(from.y).valueOf()];
  const length = Math.hypot(dx, dy);
  const by = (value: number): Fraction => new Fraction(Math.round((value / length) * 1e6), 1e10);
  const [alongY, alongX] = [by(dy), by(dx)];
  return [
    { x: x.add(alongY), y: y.sub(alongX) },
    { x: x.sub(alongY), y: y.add(alongX) },
  ];
}

/** 1 in the paper of a panel, 0 outside: how often its edges go round a point, by floats. */
function depth({ outline, holes }: Panel, point: Point): number {
  const [x, y] = [point.x.valueOf(), point.y.valueOf()];
  return [outline, ...holes].reduce((sum, ring) => sum + winding(floats(ring), x, y), 0);
}

function floats(ring: readonly Point[]): Ring {
  return ring.map((corner) => ({ x: corner.x.valueOf(), y: corner.y.valueOf() }));
}

function winding(ring: Ring, x: number, y: number): number {
  const turn = ring.reduce((sum, a, i) => {
    const b = ring[(i + 1) % ring.length] ?? a;
    const [ax, ay, bx, by] = [a.x - x, a.y - y, b.x - x, b.y - y];
    return sum + Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }, 0);
  return Math.round(turn / (2 * Math.PI));
}
