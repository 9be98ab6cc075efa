/**
 * Names in an order in which each comes after those that it needs, and what is left when some need each other.
 *
 * Needs that are not among the names are passed over. Kahn's algorithm: no recursion, so long chains are no danger.
 */
export function dependencyOrder(needs: ReadonlyMap<string, readonly string[]>): { order: string[]; circle: string[] } {
  const waitingFor = new Map<string, number>();
  const neededBy = new Map<string, string[]>();
  for (const [name, all] of needs) {
    const known = [...new Set(all)].filter((need) => needs.has(need));
    waitingFor.set(name, known.length);
    for (const need of known) neededBy.set(need, [...(neededBy.get(need) ?? []), name]);
  }
  const order = [...needs.keys()].filter((name) => waitingFor.get(name) === 0);
  for (let index = 0; index < order.length; index++) {
    for (const name of neededBy.get(order[index] ?? '') ?? []) {
      const left = (waitingFor.get(name) ?? 0) - 1;
      waitingFor.set(name, left);
      if (left === 0) order.push(name);
    }
  }
  return { order, circle: findCircle(needs, new Set(order)) };
}

/** One circle among the names that could not be ordered, in the order in which each needs the next. */
function findCircle(needs: ReadonlyMap<string, readonly string[]>, done: ReadonlySet<string>): string[] {
  const path: string[] = [];
  let name = [...needs.keys()].find((candidate) => !done.has(candidate));
  while (name !== undefined && !path.includes(name)) {
    path.push(name);
    name = needs.get(name)?.find((need) => needs.has(need) && !done.has(need));
  }
  return name === undefined ? [] : path.slice(path.indexOf(name));
}
