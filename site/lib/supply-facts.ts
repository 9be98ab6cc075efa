import { materialOfSupply, type Supply } from '../../plugins/content/index.ts';
import {
  findNamedSize,
  formatLength,
  formatMass,
  formatSize,
  Length,
  type Material,
  type NamedSize,
  readWeight,
  type System,
  toMarks,
  typesetFractions,
} from '../../plugins/engine/index.ts';

/** A property of a product in words: what it says in the inch edition and in the metric one. */
export interface SupplyFact {
  readonly name: string;
  readonly inch: string | undefined;
  readonly metric: string | undefined;
}

/** Fine enough for the thickness of paper. */
const THICKNESS_MARKS: Readonly<Record<System, Length>> = {
  inch: Length.fromInches('1/1000'),
  metric: Length.fromMm('1/100'),
};

const ORIGIN_WORDS = { measured: 'measured', table: 'from tables', estimate: 'estimated' } as const;
const GRAIN_WORDS = { long: 'along the long side', short: 'along the short side' } as const;

/** What matters of a product to whoever looks for something like it. */
export function supplyFacts(supply: Supply): readonly SupplyFact[] {
  const { maker, grain } = supply;
  const material = materialOfSupply(supply, undefined);
  const facts: readonly SupplyFact[] = [
    { name: 'Maker', inch: maker, metric: maker },
    { name: 'Sheet', inch: sheetName(supply, 'inch'), metric: sheetName(supply, 'metric') },
    { name: 'Size', inch: sheetSize(supply, 'inch'), metric: sheetSize(supply, 'metric') },
    { name: 'Weight', ...weight(supply) },
    ...thickness(material),
    length(material.sort === 'foam' ? 'Height of a layer' : 'Height', material.height),
    length('Largest bead', material.bead),
    mass(material.mass),
    { name: 'Density', inch: supply.density, metric: supply.density },
    { name: 'Grain', inch: grain && GRAIN_WORDS[grain], metric: grain && GRAIN_WORDS[grain] },
  ];
  return facts.filter(({ inch, metric }) => inch !== undefined || metric !== undefined);
}

function sheetOf(supply: Supply, system: System): NamedSize | undefined {
  const text = supply.sheet[system];
  return text === undefined ? undefined : findNamedSize(text, 'sheet').value;
}

/** A sheet of figures alone has a size and no name. */
function sheetName(supply: Supply, system: System): string | undefined {
  const sheet = sheetOf(supply, system);
  return sheet === undefined || /^\d/.test(sheet.name) ? undefined : sheet.name;
}

function sheetSize(supply: Supply, system: System): string | undefined {
  const sheet = sheetOf(supply, system);
  return sheet && typesetFractions(formatSize(sheet.width, sheet.height, system));
}

function weight(supply: Supply): Pick<SupplyFact, 'inch' | 'metric'> {
  const read = supply.weight === undefined ? undefined : readWeight(supply.weight).value;
  if (read === undefined) return { inch: supply.weight, metric: supply.weight };
  const metric = `${read.gsm.round(0).toString()} g/m²`;
  return { inch: read.pounds === undefined ? metric : supply.weight, metric };
}

function thickness({ caliper }: Material): readonly SupplyFact[] {
  if (caliper === undefined) return [];
  const say = (system: System): string =>
    formatLength(toMarks(caliper.length, THICKNESS_MARKS[system], 'nearest'), system);
  return [{ name: `Thickness, ${ORIGIN_WORDS[caliper.origin]}`, inch: say('inch'), metric: say('metric') }];
}

function length(name: string, value: Length | undefined): SupplyFact {
  const say = (system: System) => value && typesetFractions(formatLength(value, system));
  return { name, inch: say('inch'), metric: say('metric') };
}

function mass(grams: Material['mass']): SupplyFact {
  const say = (system: System) => grams && formatMass(grams, system);
  return { name: 'Weight of one', inch: say('inch'), metric: say('metric') };
}
