const TERMS = 50_000_000;

/** A fixed piece of work, in milliseconds of the processor: what this machine is like now, to compare runs by. */
export function timeReferenceLoop(): number {
  const begin = process.cpuUsage();
  let sum = 0;
  for (let i = 1; i <= TERMS; i++) sum += 1 / i;
  const { user, system } = process.cpuUsage(begin);
  // Used, so that no compiler leaves the loop out: ln(5e7) + 0.577 (Euler) is 18.3.
  if (Math.abs(sum - 18.305) > 0.01) throw new Error(`the reference loop added up to ${sum}`);
  return (user + system) / 1000;
}
