import type { Scene } from '../scene.ts';

/** One page of a template, at true size: the scene is the sheet, its lines are the piece. */
export interface PageScene extends Scene {
  /** Counted from 1, and how many there are. */
  readonly page: number;
  readonly pages: number;
  /** What is drawn on the page besides its text, for those who do not see it. */
  readonly figure: string;
}

/** A page before it is known how many there are. */
export type DraftPage = Omit<PageScene, 'page' | 'pages'>;
