import type { Card } from '../spec/index.ts';

/**
 * What an edition says of sizes that come from the table of local sizes; undefined when none does.
 *
 * `Made in ISO A6, the local size for US A2, and not converted.`
 */
export function sayLocalSize({ parameters }: Card): string | undefined {
  const taken = parameters.flatMap(({ label, local }) => (local === undefined ? [] : [{ label, ...local }]));
  const [first] = taken;
  if (first === undefined) return undefined;
  const said = `Made in ${first.name}, the local size for ${first.for}, and not converted.`;
  const limited = taken.flatMap(({ label, limit }) =>
    limit === undefined ? [] : [`${label}: the ${limit} that this size has room for.`],
  );
  return [said, ...limited].join(' ');
}
