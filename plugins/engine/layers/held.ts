import { addGlue } from './glued.ts';
import type { Held } from './held-pair.ts';
import type { Piled } from './piled.ts';
import { facesUp } from './piles.ts';
import { addPin } from './pinned.ts';
import type { Rules } from './rules.ts';
import { addSleeves } from './sleeves.ts';
import { addSlide, addSlot } from './woven.ts';

/** What glue, foam, pins, slides, slots and sleeves say about the order of plies. */
export function addHeld(rules: Rules, piled: Piled): void {
  const { paper, piles } = piled;
  const pileOf = new Map(piles.flatMap((pile) => pile.panels.map((panel) => [panel, pile])));
  const held = paper.laid.flatMap((joint): Held[] => {
    const [a, b] = [paper.indexOf.get(joint.a) ?? 0, paper.indexOf.get(joint.b) ?? 0];
    const [pile, onto] = [pileOf.get(a), paper.panels[b]];
    if (!pile || !onto || pile !== pileOf.get(b)) return [];
    return [{ joint, a, b, pile, above: facesUp(pile, onto) === (joint.join.ontoSide === 'face') }];
  });
  for (const one of held) {
    if (one.joint.is === 'glue') addGlue(rules, piled, one, held);
    if (one.joint.is === 'pin') addPin(rules, piled, one, held);
    if (one.joint.is === 'slide') addSlide(rules, piled, one);
    if (one.joint.is === 'slot') addSlot(rules, piled, one);
  }
  addSleeves(rules, piled, pileOf);
}
