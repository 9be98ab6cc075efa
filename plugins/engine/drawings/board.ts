import { type Box, grown, overlap, within } from './box.ts';
import { ARROW_WIDTH_MM } from './line-types.ts';
import { meets } from './meetings.ts';
import type { SceneArc, SceneItem, SceneLabel, SceneLine } from './scene.ts';
import { drawable, labelBox } from './text-metrics.ts';

/** Least room between two labels, and between a label and a line, in mm. */
const LABEL_CLEARANCE_MM = 0.6;
const LINE_CLEARANCE_MM = 0.3;

/**
 * The drawing sheet while it is being filled: keeps what is drawn, and finds for a label the first of several places
 * where it lies clear of every line and label drawn before it, within the room where letters may stand.
 */
export class Board {
  readonly items: SceneItem[] = [];
  readonly #labels: Box[] = [];
  readonly #lines: (SceneLine | SceneArc)[] = [];
  readonly #room: Box;

  constructor(room: Box) {
    this.#room = room;
  }

  /** Draws what `attempt` draws if it says it succeeded, else nothing. Returns whether it did. */
  try(attempt: (board: Board) => boolean): boolean {
    const copy = new Board(this.#room);
    copy.items.push(...this.items);
    copy.#labels.push(...this.#labels);
    copy.#lines.push(...this.#lines);
    const succeeded = attempt(copy);
    if (succeeded) {
      this.items.push(...copy.items.slice(this.items.length));
      this.#labels.push(...copy.#labels.slice(this.#labels.length));
      this.#lines.push(...copy.#lines.slice(this.#lines.length));
    }
    return succeeded;
  }

  /** Draws as told, without looking for room. A label's characters become ones the face has. */
  add(...items: readonly SceneItem[]): void {
    for (const item of items) {
      if (item.kind === 'label') {
        this.items.push({ ...item, text: drawable(item.text) });
        this.#labels.push(labelBox(item));
        continue;
      }
      this.items.push(item);
      if (item.kind === 'line' || item.kind === 'arc') this.#lines.push(item);
    }
  }

  /** Draws the label at the first candidate that is clear; false when none is. */
  place(candidates: Iterable<SceneLabel>): boolean {
    for (const label of candidates) {
      if (!this.isClear(labelBox(label))) continue;
      this.add(label);
      return true;
    }
    return false;
  }

  /** Boxes of the labels drawn so far, with the room that lines keep from them. */
  get lettered(): readonly Box[] {
    return this.#labels.map((box) => grown(box, LINE_CLEARANCE_MM));
  }

  /** Whether a box lies within the room and clear of everything drawn so far. */
  isClear(box: Box): boolean {
    if (!within(box, this.#room)) return false;
    const apart = grown(box, LABEL_CLEARANCE_MM);
    const off = grown(box, LINE_CLEARANCE_MM);
    return !this.#labels.some((other) => overlap(apart, other)) && !this.#lines.some((line) => touches(line, off));
  }

  /** Whether a line or an arc keeps clear of every label drawn so far. */
  isFree(...lines: readonly (SceneLine | SceneArc)[]): boolean {
    return this.lettered.every((box) => !lines.some((line) => touches(line, box)));
  }
}

/** As `meets`, for what is drawn: an arrow is wider than its line. */
function touches(line: SceneLine | SceneArc, box: Box): boolean {
  const arrows = line.kind === 'line' && line.arrows !== undefined && line.arrows !== 'none';
  return meets(line, arrows ? grown(box, ARROW_WIDTH_MM / 2) : box);
}
