import { formatMass, type System } from '../../plugins/engine/index.ts';

type Grams = Parameters<typeof formatMass>[0];

const DECIMALS: Readonly<Record<System, number>> = { inch: 2, metric: 1 };

/** A mass with all its decimals, so that a column of them can be added up: `0.10 oz`, `3.0 g`. */
export function formatWeighed(grams: Grams, system: System): string {
  return formatMass(grams, system).replace(/(\d+)(?:\.(\d*))?(?= )/, (_, whole: string, decimals = '') => {
    return `${whole}.${String(decimals).padEnd(DECIMALS[system], '0')}`;
  });
}
