import type { LegendEntry } from './legend.ts';
import type { SceneItem, SceneLabel, SceneLine, ScenePoint } from './scene.ts';
import { emOf, leadingOf, weightOf, wrapText } from './text-metrics.ts';

/** What follows downwards on a sheet: its items, and where the next thing may begin, in mm from the top. */
export interface Flowed {
  readonly items: readonly SceneItem[];
  readonly bottom: number;
}

/** Length of a line sample and the room from its start to the words, in mm. */
const SAMPLE_MM = 15;
const WORDS_AT_MM = 18;
/** Strokes of hatching in a sample, and how high they are, in mm. */
const HATCH_SAMPLES = 6;
const HATCH_SAMPLE_MM = 2;

/** A paragraph set from a top edge downwards, broken to a width. */
export function paragraph(
  text: string,
  column: { readonly left: number; readonly top: number; readonly width: number },
  style: { readonly size: number; readonly role: SceneLabel['role'] },
): Flowed {
  const { left, top, width } = column;
  const weight = weightOf(style.role);
  const leading = leadingOf(style.size, weight);
  const rise = 0.75 * emOf(style.size, weight);
  const lines = wrapText(text, style.size, width, weight);
  const items = lines.map(
    (line, i): SceneLabel => ({
      kind: 'label',
      text: line,
      at: { x: left, y: top + rise + i * leading },
      size: style.size,
      anchor: 'start',
      turn: 0,
      role: style.role,
      ...(i > 0 ? { continues: true as const } : {}),
    }),
  );
  return { items, bottom: top + lines.length * leading };
}

/** A legend: a sample of each line with its words beside it. */
export function legendRows(
  entries: readonly LegendEntry[],
  column: { readonly left: number; readonly top: number; readonly width: number },
  size: number,
): Flowed {
  const items: SceneItem[] = [];
  let top = column.top;
  for (const entry of entries) {
    const y = top + 0.5 * emOf(size, 'regular');
    items.push(...sampleOf(entry.role, { x: column.left, y }));
    const words = paragraph(
      entry.words,
      { left: column.left + WORDS_AT_MM, top, width: column.width - WORDS_AT_MM },
      { size, role: 'note' },
    );
    items.push(...words.items);
    top = words.bottom;
  }
  return { items, bottom: top };
}

/** A sample of a kind of line, from its left end; of hatching, a few of its strokes. */
function sampleOf(role: LegendEntry['role'], { x, y }: ScenePoint): readonly SceneLine[] {
  if (role === 'hatch') {
    const half = HATCH_SAMPLE_MM / 2;
    return Array.from({ length: HATCH_SAMPLES }, (_, i): SceneLine => {
      const left = x + (i * (SAMPLE_MM - HATCH_SAMPLE_MM)) / (HATCH_SAMPLES - 1);
      return { kind: 'line', role, from: { x: left, y: y + half }, to: { x: left + HATCH_SAMPLE_MM, y: y - half } };
    });
  }
  const line: SceneLine = { kind: 'line', role, from: { x, y }, to: { x: x + SAMPLE_MM, y } };
  return [role === 'grain' ? { ...line, arrows: 'both' } : line];
}
