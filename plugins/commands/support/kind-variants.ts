import {
  type Card,
  type CardParameter,
  DEFAULT_MARKS,
  type Fold,
  formatLength,
  type MapNode,
  makeCard,
  type System,
  type TextNode,
} from '../../engine/index.ts';

/** One card of a kind, and how it came about: `defaults`, or `width 2 in`. */
export interface KindVariant {
  readonly how: string;
  readonly card: Card;
}

type Setting = readonly [parameter: string, text: string];

/**
 * A kind at its defaults and with each parameter at either end of its range, or at each of its words. Where an end is
 * out of another parameter's range, that one is set to an end of its own too, and so on for up to three.
 *
 * Throws when a kind cannot be made at its defaults or at an end that it allows: that is a slip in the kind.
 */
export function variantsOf(fold: Fold, system: System): readonly KindVariant[] {
  const make = (settings: readonly Setting[]): KindVariant | undefined => {
    const mark = DEFAULT_MARKS[system];
    const parameters = mapOf(settings, fold);
    const { card } = makeCard(fold, { system, mark, units: fold.units, parameters, own: undefined, recipe: [] });
    const how = settings.length === 0 ? 'defaults' : settings.map((setting) => setting.join(' ')).join(', ');
    return card && { how, card };
  };
  const defaults = make([]);
  if (defaults === undefined) throw new Error(`${fold.name} cannot be made at its defaults`);
  const extremes = defaults.card.parameters.flatMap((parameter) => extremesOf(parameter, fold, system));
  const variants = extremes.map((extreme) => {
    for (const settings of settingsWith(extreme, extremes)) {
      const made = make(settings);
      if (made !== undefined) return made;
    }
    throw new Error(`${fold.name} cannot be made with ${extreme.join(' ')}`);
  });
  return [defaults, ...variants];
}

/** One setting alone, then with one, two and three others, each of another parameter. */
function* settingsWith(first: Setting, all: readonly Setting[]): Generator<readonly Setting[]> {
  let grown: readonly (readonly Setting[])[] = [[first]];
  for (let count = 0; count <= MOST_OTHERS; count++) {
    yield* grown;
    grown = grown.flatMap((settings) => {
      const last = settings.length === 1 ? -1 : all.indexOf(settings.at(-1) ?? first);
      const free = all.slice(last + 1).filter(([name]) => settings.every(([taken]) => taken !== name));
      return free.map((other) => [...settings, other]);
    });
  }
}

const MOST_OTHERS = 3;

function extremesOf(parameter: CardParameter, fold: Fold, system: System): readonly Setting[] {
  const words = fold.parameters.find(({ name }) => name === parameter.name)?.choices.map(({ word }) => word) ?? [];
  const ends = [parameter.from, parameter.to].flatMap((end) => {
    if (end === undefined) return [];
    if (typeof end === 'number') return [parameter.angle ? `${end} deg` : String(end)];
    return [formatLength(end, system)];
  });
  return [...ends, ...words].map((text) => [parameter.name, text]);
}

function mapOf(settings: readonly Setting[], { place }: Fold): MapNode {
  const text = (written: string): TextNode => ({ kind: 'text', text: written, place, quoted: false });
  return { kind: 'map', entries: settings.map(([name, value]) => ({ key: text(name), value: text(value) })), place };
}
