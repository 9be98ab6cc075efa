import type { Project, ProjectCard, Supply } from '../../plugins/content/index.ts';

/** Projects that hold a card of this fold kind. */
export function projectsOfFold(projects: readonly Project[], kind: string): readonly Project[] {
  return projects.filter((project) => project.cards.some((card) => card.kind?.id === kind));
}

/** Projects made with this supply: from their supply lists, and from the stock and the layers of their cards. */
export function projectsWithSupply(projects: readonly Project[], supply: string): readonly Project[] {
  return projects.filter(
    (project) =>
      project.post.supplies.some(({ use }) => use === supply) || project.cards.some((card) => isInCard(card, supply)),
  );
}

function isInCard({ stock, editions }: ProjectCard, supply: string): boolean {
  if (Object.values(stock).some(({ id }) => id === supply)) return true;
  const laid = editions.inch.card.coats.flatMap(({ items }) => items);
  return laid.some((item) => [item.with, item.through].includes(supply) && !Object.hasOwn(stock, supply));
}

export function projectsOfTechnique(projects: readonly Project[], technique: string): readonly Project[] {
  return projects.filter((project) => project.post.techniques.includes(technique));
}

/** Supplies that name this one as their substitute. */
export function substituteFor(supplies: readonly Supply[], id: string): readonly Supply[] {
  return supplies.filter((supply) => supply.substitutes.includes(id));
}

/** `1 project`, `3 projects`. */
export function sayProjects(count: number): string {
  if (count === 0) return 'no project yet';
  return `${count} ${count === 1 ? 'project' : 'projects'}`;
}
