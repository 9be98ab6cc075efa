/**
 * A drawing, in millimetres on paper: x to the right, y down, origin at the top left of the drawing's own sheet.
 *
 * A scene knows nothing of SVG or PDF. Renderers have one handler a primitive, and are the only place that rounds.
 */
export interface Scene {
  readonly width: number;
  readonly height: number;
  /** Short name of the drawing, as a caption. */
  readonly title: string;
  /** The drawing in words: plain sentences from which the work can be done without seeing it. */
  readonly words: readonly string[];
  readonly items: readonly SceneItem[];
}

/**
 * What a line means. It decides weight and dash (see `line-types.ts`); never colour.
 * `outline` is the edge of a piece as drawn, `cut` a line to cut within it, `both` a crease worked both ways, `mark` a line
 * drawn on the paper, `join` where one page of a template meets the next, `frame` a mark or square to measure or line up,
 * `hatch` the strokes over what is cut out or away.
 */
export type LineRole =
  | 'outline'
  | 'cut'
  | 'valley'
  | 'mountain'
  | 'both'
  | 'perforation'
  | 'mark'
  | 'hidden'
  | 'join'
  | 'dimension'
  | 'extension'
  | 'grain'
  | 'frame'
  | 'hatch';

export type SceneItem = SceneLine | SceneArc | SceneFill | SceneLabel;

export interface ScenePoint {
  readonly x: number;
  readonly y: number;
}

export interface SceneLine {
  readonly kind: 'line';
  readonly role: LineRole;
  readonly from: ScenePoint;
  readonly to: ScenePoint;
  /** Arrowheads 3:1, filled. */
  readonly arrows?: 'none' | 'end' | 'both';
  /** How much of the line lies before `from`, on another page, in mm: its dashes go on from there. */
  readonly before?: number;
}

/** Part of a circle, or of an ellipse that stands square to the sheet. */
export interface SceneArc extends ArcOfEllipse {
  readonly kind: 'arc';
  readonly role: LineRole;
}

export interface ArcOfEllipse {
  readonly centre: ScenePoint;
  /** Half the width and half the height; equal for a circle. */
  readonly rx: number;
  readonly ry: number;
  /**
   * Degrees clockwise from the positive x axis, `to` greater than `from`; a full turn is 0 to 360. On an ellipse they are those
   * of the circle that it is drawn out of: the point at t is centre + (rx cos t, ry sin t).
   */
  readonly from: number;
  readonly to: number;
}

/** A region filled with a tone, by the even-odd rule: an outline inside another is a hole. */
export interface SceneFill {
  readonly kind: 'fill';
  readonly tone: 'paper' | 'waste' | 'ink' | 'shade';
  readonly outlines: readonly SceneOutline[];
}

/** A closed path; each edge begins where the last one ended. */
export type SceneOutline = readonly SceneEdge[];

export type SceneEdge =
  | { readonly is: 'line'; readonly from: ScenePoint; readonly to: ScenePoint }
  /** Walked from `from` to `to`, or `backwards`. */
  | ({ readonly is: 'arc'; readonly backwards: boolean } & ArcOfEllipse);

export interface SceneLabel {
  readonly kind: 'label';
  /** The text as drawn: fractions typeset and every character one that the face has (`drawable`). */
  readonly text: string;
  /** On the baseline: left end, middle or right end by `anchor`. */
  readonly at: ScenePoint;
  /** Letter height (capital) in mm, one of ISO 3098-1's: 1.8, 2.5, 3.5, 5, 7. */
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Degrees counter-clockwise on the page; 0 reads from the bottom, 90 from the right. */
  readonly turn: 0 | 90;
  readonly role: 'figure' | 'name' | 'note' | 'title';
  /** The text goes on from the label before it: a paragraph of several lines. */
  readonly continues?: true;
}
