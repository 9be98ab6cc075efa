/**
 * The known name that a mistyped one most likely meant, or undefined when none is near.
 *
 * Distance is optimal string alignment (insert, delete, replace, swap neighbours, each 1), compared without case,
 * spaces or hyphens; a name is near when at most a third of its characters differ, and at least one edit is allowed.
 */
export function nearestName(written: string, known: Iterable<string>): string | undefined {
  const wanted = fold(written);
  let best: string | undefined;
  let bestDistance = Number.POSITIVE_INFINITY;
  for (const name of known) {
    const candidate = fold(name);
    const allowed = Math.max(1, Math.floor(Math.max(wanted.length, candidate.length) / 3));
    // Each character too many is one edit at least.
    if (Math.abs(wanted.length - candidate.length) > allowed) continue;
    const distance = editDistance(wanted, candidate);
    if (distance <= allowed && distance < bestDistance) {
      best = name;
      bestDistance = distance;
    }
  }
  return best;
}

function fold(name: string): string {
  return name.toLowerCase().replace(/[\s_-]+/g, '');
}

function editDistance(a: string, b: string): number {
  const rows: number[][] = Array.from({ length: a.length + 1 }, (_, i) => [i]);
  const at = (i: number, j: number): number => rows[i]?.[j] ?? 0;
  for (let j = 1; j <= b.length; j++) (rows[0] as number[])[j] = j;
  for (let i = 1; i <= a.length; i++) {
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min(at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, at(i - 2, j - 2) + 1);
      (rows[i] as number[])[j] = least;
    }
  }
  return at(a.length, b.length);
}
