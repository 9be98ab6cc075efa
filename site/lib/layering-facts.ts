import type { CardEdition, ProjectCard } from '../../plugins/content/index.ts';
import { formatLength, formatMass, Length, type System, toMarks } from '../../plugins/engine/index.ts';

/** A fact of a card with its name, in both editions. */
interface Fact {
  readonly name: string;
  readonly inch: string | undefined;
  readonly metric: string | undefined;
}

/** As fine as a fact in passing need be; the layer list has the caliper's figures. */
const MARKS: Readonly<Record<System, Length>> = { inch: Length.fromInches('1/100'), metric: Length.fromMm('1/10') };

/** How thick a card is at its thickest, closed; nothing for one that does not lie flat. */
export function thicknessFact({ editions }: ProjectCard): Fact {
  const told = [editions.inch, editions.metric].map(thickestIn);
  const say = (thickness: (typeof told)[number], system: System): string | undefined =>
    thickness && formatLength(toMarks(thickness.overall, MARKS[system], 'nearest'), system);
  const name = `Thickness${careful(told.flatMap((one) => one ?? []))}`;
  return { name, inch: say(told[0], 'inch'), metric: say(told[1], 'metric') };
}

/** What a card weighs without its envelope. */
export function weightFact({ editions: { inch, metric } }: ProjectCard): Fact {
  const name = `Weight${careful([inch.mass, metric.mass])}`;
  return { name, inch: formatMass(inch.mass.grams, 'inch'), metric: formatMass(metric.mass.grams, 'metric') };
}

function thickestIn({ bodies }: CardEdition) {
  const known = bodies.flatMap(({ thickness }) => thickness ?? []);
  return known.toSorted((a, b) => b.overall.compare(a.overall))[0];
}

/** What rests upon usual papers is about so; what lacks a figure is more. */
function careful(
  told: readonly { readonly unknown: readonly unknown[]; readonly assumed: readonly unknown[] }[],
): string {
  if (told.some(({ unknown }) => unknown.length > 0)) return ', over';
  return told.some(({ assumed }) => assumed.length > 0) ? ', about' : '';
}
