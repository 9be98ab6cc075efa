import { computeKind, type FoldKind, type Library, type ProjectCard } from '../../plugins/content/index.ts';

/** What a drawing needs of a card. */
export type DrawnCard = Pick<ProjectCard, 'key' | 'name' | 'editions'>;

/** A fold kind at its usual size, as a card to be drawn. Throws for a kind that the check of the content let through wrongly. */
export function kindCard(library: Library, kind: FoldKind): DrawnCard {
  const { project } = computeKind(library, kind);
  if (project === undefined) throw new Error(`${kind.file} cannot be made at its usual size.`);
  return { key: kind.id, name: kind.name, editions: project.editions };
}
