import { variantsOf } from '../../../plugins/commands/support/kind-variants.ts';
import { buildLibrary, foldOf, readContent } from '../../../plugins/content/index.ts';
import { type Card, SYSTEMS, type System } from '../../../plugins/engine/index.ts';

export interface KindCase {
  readonly name: string;
  readonly system: System;
  readonly card: Card;
}

/** Every fold kind of the demo blog, at its defaults and at both ends of each parameter, in both editions. */
export function everyKind(): readonly KindCase[] {
  const { library } = buildLibrary(readContent('.'));
  if (library === undefined) throw new Error('the content has errors');
  return [...library.folds.values()].flatMap((kind) =>
    SYSTEMS.flatMap((system) =>
      variantsOf(foldOf(kind), system).map(({ how, card }) => ({
        name: `${kind.name}, ${how}, ${system}`,
        system,
        card,
      })),
    ),
  );
}
