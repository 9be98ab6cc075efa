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
 * `outline` is the edge of a piece as drawn, `cut` a line to cut within it,
 * `join` where one page of a template meets the next, `frame` a mark or square to measure or line up.
 */
export type LineRole =
  | 'outline'
  | 'cut'
  | 'valley'
  | 'mountain'
  | 'perforation'
  | 'hidden'
  | 'join'
  | 'dimension'
  | 'extension'
  | 'grain'
  | 'frame';

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
}

export interface SceneArc {
  readonly kind: 'arc';
  readonly role: LineRole;
  readonly centre: ScenePoint;
  readonly radius: number;
  /** Degrees clockwise from the positive x axis, `to` greater than `from`; a full circle is 0 to 360. */
  readonly from: number;
  readonly to: number;
}

export interface SceneFill {
  readonly kind: 'fill';
  readonly tone: 'paper' | 'waste' | 'ink' | 'shade';
  readonly outline: readonly ScenePoint[];
}

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
