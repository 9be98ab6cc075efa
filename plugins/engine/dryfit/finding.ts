import type { Place } from '../diagnostics/index.ts';
import type { Length } from '../units/index.ts';
import { type CheckName, OUTCOME_STATES, type OutcomeName, type Outcomes } from './outcomes.ts';
import type { Fact, Finding } from './types.ts';

/** Anything that knows where it was written. */
interface Written {
  readonly place: Place;
  readonly path: string;
}

interface Shown<C extends CheckName, O extends OutcomeName<C>> {
  readonly facts: Outcomes[C][O];
  readonly at: Written;
  readonly figure?: Length | number;
  readonly limit?: Length | number;
  readonly witness?: string;
}

/** One answer of a check, with its state looked up. The facts are checked against the outcome by the compiler. */
export function finding<C extends CheckName, O extends OutcomeName<C>>(
  check: C,
  outcome: O,
  { facts, at, figure, limit, witness }: Shown<C, O>,
): Finding {
  return {
    check,
    outcome,
    state: OUTCOME_STATES[check][outcome],
    figure,
    limit,
    witness,
    facts: facts as Readonly<Record<string, Fact>>,
    place: at.place,
    path: at.path,
  };
}
