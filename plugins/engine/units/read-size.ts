import { HYPHEN, SPACE, TIMES } from './characters.ts';
import { type Fault, faultAt, LONGEST_TEXT, type Reading, type ReadOptions, reading } from './fault.ts';
import { leftoverFault } from './leftover.ts';
import type { Length } from './length.ts';
import { type Numeral, readNumeral } from './numeral.ts';
import { bareFault, otherUnitFault, unitAfter } from './read-length.ts';
import { openNumber } from './read-number.ts';
import { matchAt, skipSpaces, sticky } from './scan.ts';
import type { Unit } from './system.ts';
import { lengthOf, UNIT_NAMES, type WrittenUnit } from './unit.ts';

/** A size as makers say it, width first. `unit` is the one it was written in: the width's, should they differ. */
export interface WrittenSize {
  readonly width: Length;
  readonly height: Length;
  readonly unit: Unit;
}

const SIZE_TAKES = 'a size, width first, as `4 1/4 x 5 1/2 in` or `105 x 148 mm`';

const BETWEEN = sticky(`${SPACE}*(?:[x*\\u0445]|${TIMES}|${HYPHEN}?by\\b${HYPHEN}?)${SPACE}*`, 'i');
const LETTER = sticky('\\p{L}', 'u');

/** A width and a height, exactly: `2 3/4 x 5 1/2 in` (the unit at the end serves both), `5" x 7"`, `105 × 148 mm`. */
export function readSize(text: string, options: ReadOptions = {}): Reading<WrittenSize> {
  const glued = text.length <= LONGEST_TEXT ? readGlued(text) : undefined;
  if (glued) return { value: undefined, faults: [glued] };
  const opening = openNumber(text, SIZE_TAKES, options);
  if ('fault' in opening) return { value: undefined, faults: [opening.fault] };
  const { numeral: width, start } = opening;
  const widthUnit = beforeTimes(text, width.end);
  const times = timesAfter(text, widthUnit?.end ?? width.end);
  if (times === undefined) return refuse(text, start, width, widthUnit);
  const height = readNumeral(text, times, { hyphen: true, decimalComma: options.decimalComma });
  if (!height) return refuse(text, start, width, widthUnit);
  const heightUnit = beforeTimes(text, height.end);
  const faults: Fault[] = [...width.faults, ...height.faults];
  const end = heightUnit?.end ?? height.end;
  if (skipSpaces(text, end) < text.length) {
    const more =
      timesAfter(text, end) === undefined ? leftoverFault(text, start, end, SIZE_TAKES) : thirdFault(text, start);
    return { value: undefined, faults: [...faults, more] };
  }
  return finish(text, start, [width, height], [widthUnit, heightUnit], options, faults);
}

function finish(
  text: string,
  start: number,
  [width, height]: readonly [Numeral, Numeral],
  [widthUnit, heightUnit]: readonly [WrittenUnit | undefined, WrittenUnit | undefined],
  options: ReadOptions,
  faults: Fault[],
): Reading<WrittenSize> {
  for (const [numeral, unit] of [
    [width, widthUnit],
    [height, heightUnit],
  ] as const) {
    if (unit?.kind === 'other') faults.push(otherUnitFault(text, unit.end - unit.word.length, numeral, unit));
    if (numeral.value.equals(0) && !faults.some((fault) => fault.severity === 'error')) {
      const remedy = 'Write two lengths above zero.';
      faults.push(faultAt(text, start, text.length, { code: 'size-zero', takes: SIZE_TAKES, remedy }));
    }
  }
  if (faults.some((fault) => fault.severity === 'error')) return { value: undefined, faults };
  const first = widthUnit?.kind === 'unit' ? widthUnit.unit : undefined;
  const second = heightUnit?.kind === 'unit' ? heightUnit.unit : undefined;
  const unit = first ?? second ?? options.units;
  if (!unit) return { value: undefined, faults: [...faults, bareFault(text, start, height.end)] };
  if (first && second && first !== second) faults.push(mixedFault(text, start, first, second));
  if (first && !second && first !== options.units) faults.push(unitFirstFault(text, start, height.end, first));
  const size = { width: lengthOf(width.value, unit), height: lengthOf(height.value, second ?? unit), unit };
  return reading(size, faults);
}

/** A unit between the width and the times sign. */
function beforeTimes(text: string, at: number): WrittenUnit | undefined {
  if (timesAfter(text, at) !== undefined) return undefined;
  return unitAfter(text, at);
}

/** Where the height starts: past an x, a times sign or the word by. */
function timesAfter(text: string, at: number): number | undefined {
  const match = matchAt(BETWEEN, text, at);
  return match && matchAt(LETTER, text, at + match[0].length) === undefined ? at + match[0].length : undefined;
}

/** `5x7`: the letter x run together with the numbers. */
function readGlued(text: string): Fault | undefined {
  const match = /^\s*([\d\s./¼-¾⅐-⅞⁄"”″'’′]*[\d¼-¾⅐-⅞"”″'’′])[xX*]([\d¼-¾⅐-⅞].*)$/.exec(text);
  if (!match) return undefined;
  const remedy = `Write \`${match[1]} x ${match[2]?.trim()}\`, with spaces round the x.`;
  return faultAt(text, skipSpaces(text, 0), text.trimEnd().length, { code: 'size-spaces', takes: SIZE_TAKES, remedy });
}

function refuse(text: string, start: number, width: Numeral, unit: WrittenUnit | undefined): Reading<WrittenSize> {
  const faults: Fault[] = [...width.faults];
  const end = unit?.end ?? width.end;
  if (skipSpaces(text, end) >= text.length) {
    const remedy = 'Only one measure is written. Write width and height with an x between them.';
    faults.push(faultAt(text, start, text.length, { code: 'size-one-measure', takes: SIZE_TAKES, remedy }));
  } else if (!faults.some((fault) => fault.severity === 'error')) {
    faults.push(leftoverFault(text, start, end, SIZE_TAKES));
  }
  return { value: undefined, faults };
}

function thirdFault(text: string, start: number): Fault {
  const remedy = 'Three measures are written. Write the width and the height only.';
  return faultAt(text, start, text.trimEnd().length, { code: 'size-three-measures', takes: SIZE_TAKES, remedy });
}

function mixedFault(text: string, start: number, first: Unit, second: Unit): Fault {
  const remedy = `The width is in ${UNIT_NAMES[first]} and the height in ${UNIT_NAMES[second]}. Write both in one unit, unless you meant it so.`;
  const takes = SIZE_TAKES;
  return faultAt(text, start, text.trimEnd().length, { code: 'size-mixed-units', severity: 'warning', takes, remedy });
}

function unitFirstFault(text: string, start: number, end: number, unit: Unit): Fault {
  const remedy = `The height has no unit and is read as ${UNIT_NAMES[unit]}. Write the unit once, at the end.`;
  return faultAt(text, start, end, { code: 'size-unit-first', severity: 'warning', takes: SIZE_TAKES, remedy });
}
