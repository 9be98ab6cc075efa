import { type Complaint, suggest } from './report.ts';
import { isName } from './words.ts';

/** What is wrong with a part of an expression; what was written is taken from its place. */
export type Slip = Omit<Complaint, 'wrote'>;

export const AREA: Slip = {
  code: 'length-times-length',
  takes: 'a length times a number',
  remedy: 'Multiply by a number without a unit: a length times a length would be an area.',
};

export const UPSIDE_DOWN: Slip = {
  code: 'number-over-length',
  takes: 'a length divided by a number, or by another length',
  remedy: 'Turn the division round, or divide by a number without a unit.',
};

export const MIXED: Slip = {
  code: 'length-with-count',
  takes: 'two lengths, or two counts',
  remedy: 'Multiply the count by a length first.',
};

export function mixed(count: string): Slip {
  return { ...MIXED, remedy: `\`${count}\` is a plain number. Multiply it by a length first.` };
}

export const ANGLE_MIXED: Slip = {
  code: 'angle-mixed',
  takes: 'two angles, or two lengths',
  remedy: 'An angle is added to, or compared with, an angle. Take one of the two out.',
};

export const ANGLE_TIMES: Slip = {
  code: 'angle-times',
  takes: 'an angle times or over a plain number, or an angle over another',
  remedy: 'Multiply or divide an angle by a plain number only.',
};

const NOT_A_LENGTH: Slip = {
  code: 'number-for-length',
  takes: 'a length',
  remedy: 'This comes out as a plain number. Multiply it by a length.',
};

const NOT_A_COUNT: Slip = {
  code: 'length-for-number',
  takes: 'a plain number',
  remedy: 'Write a number without a unit.',
};

const ANGLE_FOR_LENGTH: Slip = {
  code: 'angle-for-length',
  takes: 'a length',
  remedy: 'This comes out as an angle. Write a length here.',
};

const ANGLE_FOR_NUMBER: Slip = {
  code: 'angle-for-number',
  takes: 'a plain number',
  remedy: 'Write a number without `deg`.',
};

const NOT_AN_ANGLE: Slip = {
  code: 'no-angle',
  takes: 'an angle, as `50 deg`',
  remedy: 'Write an angle in degrees, as `50 deg`.',
};

const NO_SIZE: Slip = {
  code: 'number-for-length',
  takes: 'a length, or an angle as `50 deg`',
  remedy: NOT_A_LENGTH.remedy,
};

/** What to say where something else is needed than has come out. */
export function wrongKind(want: 'length' | 'number' | 'angle' | 'size', came: 'length' | 'number' | 'angle'): Slip {
  if (want === 'angle') return NOT_AN_ANGLE;
  if (want === 'size') return NO_SIZE;
  if (came === 'angle') return want === 'length' ? ANGLE_FOR_LENGTH : ANGLE_FOR_NUMBER;
  return want === 'length' ? NOT_A_LENGTH : NOT_A_COUNT;
}

/** A name that nothing has: perhaps a subtraction or a size without its spaces, or a slip of the pen. */
export function unknownName(name: string, known: readonly string[]): Slip {
  const takes = known.length === 0 ? 'a size, as `4 1/4`' : `a size, or one of ${known.join(', ')}`;
  const parts = name.split('-');
  for (let cut = 1; cut < parts.length; cut++) {
    const [left, right] = [parts.slice(0, cut).join('-'), parts.slice(cut).join('-')];
    const isKnown = (part: string): boolean => known.includes(part) || /^\d/u.test(part);
    if (isKnown(left) && isKnown(right)) {
      const remedy = `A name may hold a hyphen, so this is read as one name. To subtract, write \`${left} - ${right}\`.`;
      return { code: 'minus-in-name', takes, remedy };
    }
  }
  const times = /^(.+)x(.+)$/u.exec(name);
  if (times?.[1] && times[2] && known.includes(times[1]) && known.includes(times[2])) {
    const remedy = `Put a space each side of the x: \`${times[1]} x ${times[2]}\`.`;
    return { code: 'size-without-spaces', takes: 'a size, as `width x height`', remedy };
  }
  const otherwise = isName(name)
    ? `Nothing here is called \`${name}\`. Add it under \`parameters\` or \`values\`.`
    : 'Write a name.';
  return { code: 'unknown-name', takes, remedy: suggest(name, known, otherwise) };
}
