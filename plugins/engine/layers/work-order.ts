import type { Assembly, Joint } from '../assembly/index.ts';
import type { Coat, Filling, Join, Piece } from '../spec/index.ts';
import { type Chamber, chamberOf } from './chamber.ts';
import type { Materials } from './material.ts';

/** One thing that hands do, in the order of work. */
export type WorkOrderStep =
  | { readonly is: 'coat'; readonly coat: Coat }
  | { readonly is: 'join'; readonly join: Join }
  | { readonly is: 'fill'; readonly filling: Filling };

/** The order of work, and the chambers of the fillings in it. */
export interface WorkOrder {
  readonly steps: readonly WorkOrderStep[];
  readonly chambers: readonly Chamber[];
  /** Pieces that no join speaks of. */
  readonly loose: readonly Piece[];
}

/**
 * Coats, joins and fillings in the order of work.
 *
 * `layers` go as they are written. Joins keep the order of the file: `glue: film` there means that by then all joins are made up to
 * the first that sticks `film`. A filling goes in before its chamber is closed by the last of its joins, unless `layers` say when.
 */
export function workOrder(assembly: Assembly, materials: Materials): WorkOrder {
  const { card } = assembly;
  const chambers = card.fillings.flatMap((filling) => chamberOf(filling, assembly, materials) ?? []);
  const writer = new Writer(card.joins, chambers);
  const written = new Set(card.work.flatMap((step) => (step.is === 'fill' ? [step.filling] : [])));
  const unwritten = chambers.filter(({ filling }) => !written.has(filling.name));
  for (const step of card.work) {
    if (step.is === 'coat') writer.steps.push({ is: 'coat', coat: step.coat });
    else if (step.is === 'glue') writer.joinUpTo(firstJoinOf(step.piece, card.joins), unwritten);
    else {
      const chamber = chambers.find(({ filling }) => filling.name === step.filling);
      const filling = card.fillings.find(({ name }) => name === step.filling);
      if (chamber) writer.joinUpTo(closingJoin(chamber, card.joins) - 1, unwritten);
      if (filling) writer.steps.push({ is: 'fill', filling });
    }
  }
  writer.joinUpTo(card.joins.length - 1, unwritten);
  const joined = new Set(card.joins.flatMap(({ part, onto }) => [part.piece, onto.piece]));
  return { steps: writer.steps, chambers, loose: card.pieces.filter(({ name }) => !joined.has(name)) };
}

class Writer {
  readonly steps: WorkOrderStep[] = [];
  private done = 0;
  private readonly joins: readonly Join[];
  private readonly chambers: readonly Chamber[];

  constructor(joins: readonly Join[], chambers: readonly Chamber[]) {
    this.joins = joins;
    this.chambers = chambers;
  }

  /** Makes the joins that are not made yet up to one, filling each chamber before it is closed. */
  joinUpTo(last: number, unwritten: readonly Chamber[]): void {
    for (; this.done <= last; this.done++) {
      const join = this.joins[this.done];
      if (join === undefined) return;
      for (const chamber of this.chambers) {
        if (closingJoin(chamber, this.joins) !== this.done || !unwritten.includes(chamber)) continue;
        this.steps.push({ is: 'fill', filling: chamber.filling });
      }
      this.steps.push({ is: 'join', join });
    }
  }
}

/** The join that closes a chamber: the last in the file of those that hold it together. */
export function closingJoin({ joints }: Pick<Chamber, 'joints'>, joins: readonly Join[]): number {
  return Math.max(-1, ...joints.map((joint) => joins.indexOf(joinOf(joint) as Join)));
}

function joinOf(joint: Joint): Join | undefined {
  return 'join' in joint ? joint.join : undefined;
}

function firstJoinOf(piece: string, joins: readonly Join[]): number {
  return joins.findIndex(({ part }) => part.piece === piece);
}
