import type { AssemblyParts, JoinSpec } from './assembly-specs.ts';
import { type Expression, namesIn } from './expression.ts';

/** What an expression of a join, filling or pose has to come out as: `any` where the thing it is said of decides. */
export interface Wanted {
  readonly expression: Expression;
  readonly want: 'length' | 'number' | 'angle' | 'any';
}

/** Every expression in the joins, fillings and poses of a fold: for checking its names, and what comes of it. */
export function expressionsOfParts(parts: AssemblyParts): Wanted[] {
  const wanted = (want: Wanted['want'], ...all: readonly (Expression | undefined)[]): Wanted[] =>
    all.flatMap((expression) => (expression ? [{ expression, want }] : []));
  const ofJoin = (join: JoinSpec): Wanted[] => {
    switch (join.is) {
      case 'glue':
        return [
          ...wanted('length', join.after, join.foam?.high),
          ...wanted('number', join.foam?.layers),
          ...wanted('angle', join.turn),
        ];
      case 'pin':
        return wanted('angle', join.turn);
      case 'slide':
        return [...wanted('length', join.keep), ...wanted('angle', join.turn)];
      case 'slip':
        return wanted('length', join.play);
      case 'slot':
        return [];
      case 'rest':
        return wanted('length', join.away);
      case 'hang':
        return wanted('length', join.after, join.thread);
    }
  };
  // A bare number in a pose is degrees or a distance, as the thing is that it is said of.
  const inPoses = parts.poses.flatMap(({ settings }) =>
    settings.flatMap(({ setting }) =>
      setting.is === 'amount' && namesIn(setting.amount).length > 0 ? [setting.amount] : [],
    ),
  );
  return [
    ...wanted('any', ...inPoses),
    ...parts.joins.flatMap(ofJoin),
    ...parts.fillings.flatMap(({ full }) => wanted('number', full)),
  ];
}
