import type Fraction from 'fraction.js';
import type { Assembly, Joint } from '../assembly/index.ts';
import type { Bounds, Placement, Point, SpacePoint } from '../geometry/index.ts';

/** One panel where a pose puts it. */
export interface PlacedPanel {
  readonly panel: string;
  readonly piece: string;
  readonly placement: Placement;
  /** Towards the reader who looks square on the ground panel's face: `up` its face, `down` its back, `edge-on` when it stands. */
  readonly faces: 'up' | 'down' | 'edge-on' | 'slanting';
  /** Its outline seen square to the ground panel, in that panel's drawing frame (y down). In a flat pose, where it lies. */
  readonly outline: readonly Point[];
  readonly holes: readonly (readonly Point[])[];
}

/** A body of an assembly in one pose whose angles are all known. Exact unless a coordinate is `rounded`. */
export interface ClosedPose {
  readonly pose: string;
  readonly assembly: Assembly;
  /** Index into `assembly.bodies`. */
  readonly body: number;
  /** The panel that stays put: its placement leaves it as drawn, face up. */
  readonly ground: string;
  readonly panels: readonly PlacedPanel[];
  /** Every panel lies parallel to the ground. */
  readonly flat: boolean;
  /** Joints of loops that do not meet, worst first. */
  readonly gaps: readonly Gap[];
  /** Joins in loops whose foam had to be left out of account, since with it the loop would not meet. */
  readonly pressed: readonly Joint[];
  /** Smallest rectangle around the outlines, in the ground's drawing frame. */
  readonly box: Bounds;
  /** From the lowest to the highest point, square to the ground: zero in a flat pose without foam. */
  readonly deep: Fraction;
}

/** A joint whose two panels come to lie apart, or turned against each other. */
export interface Gap {
  readonly joint: Joint;
  /** Largest distance between what should meet, in mm. */
  readonly mm: number;
  /** Where that is: the point as one panel and as the other puts it. */
  readonly at: { readonly a: SpacePoint; readonly b: SpacePoint };
}

/** Why a body has no known angles in a pose: `creases` are left to the solver. */
export interface Unsolved {
  readonly pose: string;
  /** Index into `assembly.bodies`. */
  readonly body: number;
  readonly creases: readonly { readonly piece: string; readonly crease: string }[];
}

/** What of a closed body lies outside of what should cover it. */
export interface Overhang {
  readonly panel: string;
  /** Region outside, as polygons in the ground's drawing frame, mm. */
  readonly region: readonly (readonly { readonly x: number; readonly y: number }[])[];
  /** The point furthest outside, its distance from the cover in mm, and the side it is on. */
  readonly worst: { readonly x: number; readonly y: number };
  readonly mm: number;
  readonly side: 'left' | 'right' | 'top' | 'bottom';
}
