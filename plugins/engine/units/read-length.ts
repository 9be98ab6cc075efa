import { HYPHEN, SPACE } from './characters.ts';
import { type Fault, faultAt, type Reading, type ReadOptions, reading } from './fault.ts';
import { leftoverFault } from './leftover.ts';
import type { Length } from './length.ts';
import type { Numeral } from './numeral.ts';
import { openNumber } from './read-number.ts';
import { matchAt, skipSpaces, sticky } from './scan.ts';
import type { Unit } from './system.ts';
import { lengthOf, readUnit, UNIT_TAKES, type WrittenUnit } from './unit.ts';

/** A length and the unit it was written in. */
export interface WrittenLength {
  readonly length: Length;
  readonly unit: Unit;
}

const LENGTH_TAKES = 'a length, as `5 1/2 in`, `5.5"`, `139.7 mm` or `14 cm`';

const BEFORE_UNIT = sticky(`${HYPHEN}(?=[A-Za-z])|${SPACE}*`);

/** One length standing alone, exactly. A number without a unit is refused unless `options.units` says what it means. */
export function readLength(text: string, options: ReadOptions = {}): Reading<WrittenLength> {
  const opening = openNumber(text, LENGTH_TAKES, options);
  if ('fault' in opening) return { value: undefined, faults: [opening.fault] };
  const { numeral, start } = opening;
  const faults: Fault[] = [...numeral.faults];
  if (faults.some((fault) => fault.severity === 'error')) return { value: undefined, faults };
  const unit = unitAfter(text, numeral.end);
  const end = unit?.end ?? numeral.end;
  if (skipSpaces(text, end) < text.length)
    return reading<WrittenLength>(undefined, [...faults, goesOn(text, start, numeral, unit)]);
  if (unit?.kind === 'other')
    return reading<WrittenLength>(undefined, [...faults, otherUnitFault(text, start, numeral, unit)]);
  const written = unit?.unit ?? options.units;
  if (!written) return reading<WrittenLength>(undefined, [...faults, bareFault(text, start, numeral.end)]);
  return reading({ length: lengthOf(numeral.value, written), unit: written }, faults);
}

/** The unit after a number: at once, past spaces, or past a hyphen (`5-inch`). */
export function unitAfter(text: string, at: number): WrittenUnit | undefined {
  return readUnit(text, at + (matchAt(BEFORE_UNIT, text, at)?.[0].length ?? 0));
}

/** The fault of a number whose unit is missing. */
export function bareFault(text: string, start: number, end: number): Fault {
  const number = text.slice(start, end).trim();
  const remedy = `Write \`${number} in\` or \`${number} mm\`, or state the units once at the top of the file: \`units: in\`.`;
  return faultAt(text, start, end, { code: 'unit-missing', takes: UNIT_TAKES, remedy });
}

/** The fault of a unit that is not read. */
export function otherUnitFault(
  text: string,
  start: number,
  numeral: Numeral,
  unit: WrittenUnit & { kind: 'other' },
): Fault {
  const feet = /^['‘’′]/.test(unit.word);
  const code = feet ? 'unit-feet' : 'unit-unknown';
  return faultAt(text, start, unit.end, { code, takes: UNIT_TAKES, remedy: unit.remedy(numeral.value) });
}

function goesOn(text: string, start: number, numeral: Numeral, unit: WrittenUnit | undefined): Fault {
  if (unit?.kind === 'unit') return leftoverFault(text, start, unit.end, LENGTH_TAKES);
  const fault = leftoverFault(text, start, numeral.end, LENGTH_TAKES);
  return unit && fault.code === 'number-leftover' ? otherUnitFault(text, start, numeral, unit) : fault;
}
