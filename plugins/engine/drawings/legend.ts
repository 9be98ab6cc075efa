import { LEGEND_WORDS, type LegendLine } from '../wording/index.ts';
import type { LineRole, SceneItem } from './scene.ts';

/** One kind of line that a drawing uses, and what it asks of the maker. */
export interface LegendEntry {
  readonly role: LegendLine;
  readonly words: string;
}

/** The kinds of line that a scene uses, in the order of the work; lines that only measure need no explaining. */
export function legendOf(scene: { readonly items: readonly SceneItem[] }): readonly LegendEntry[] {
  const used = new Set<LineRole>();
  for (const item of scene.items) if (item.kind === 'line' || item.kind === 'arc') used.add(item.role);
  return LEGEND_ORDER.filter((role) => used.has(role)).map((role) => ({ role, words: LEGEND_WORDS[role] }));
}

const LEGEND_ORDER: readonly LegendLine[] = [
  'outline',
  'cut',
  'perforation',
  'valley',
  'mountain',
  'both',
  'mark',
  'hidden',
  'join',
  'grain',
  'hatch',
];
