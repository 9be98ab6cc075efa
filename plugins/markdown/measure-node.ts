import type { Element, ElementContent } from 'hast';
import type { Data, Literal } from 'mdast';
import {
  formatLengths,
  Length,
  type Marks,
  type Measure,
  type System,
  spokenLengths,
  systemOf,
  toMarks,
  typesetFractions,
} from '../engine/index.ts';

/** A measure in the text of a post. `value` is what its author wrote. */
export interface MeasureNode extends Literal {
  type: 'measure';
  data: Data;
}

declare module 'mdast' {
  interface PhrasingContentMap {
    measure: MeasureNode;
  }
  interface RootContentMap {
    measure: MeasureNode;
  }
}

/** A measure that is off by more than this part of itself on the marks is given more finely. */
const COARSE = '1/8';

/** What a measure is given in when the marks are too coarse for it, as for the thickness of cardstock. */
const FINE: Marks = { inch: Length.fromInches('1/1000'), metric: Length.fromMm('1/100') };

/**
 * A measure in both systems, the author's own first and exact, the other on its ruler's marks and in brackets:
 *
 *     <span class="measure" data-written="inch">
 *       <span class="measure-inch">FIGURE</span>
 *       <span class="measure-metric"><span class="measure-bracket"> (</span>FIGURE<span class="measure-bracket">)</span></span>
 *     </span>
 *
 * where a FIGURE is `<span class="measure-figure" aria-hidden="true">5 1⁄2 in</span><span class="measure-spoken">five and
 * a half inches</span>`. There is no white space but what stands here in quotes. A style sheet hides `.measure-spoken`
 * from the eye and from the clipboard; when a reader has chosen a system it hides the other one and every bracket.
 */
export function measureNode(measure: Measure, written: string, marks: Marks): MeasureNode {
  const own = systemOf(measure.unit);
  const other: System = own === 'inch' ? 'metric' : 'inch';
  const converted = measure.lengths.map((length) => onMarks(length, marks[other], FINE[other]));
  const children = [
    span([`measure-${own}`], figure(measure.lengths, own)),
    span([`measure-${other}`], [bracket(' ('), ...figure(converted, other), bracket(')')]),
  ];
  const { tagName, properties } = span(['measure'], []);
  return {
    type: 'measure',
    value: written,
    data: { hName: tagName, hProperties: { ...properties, dataWritten: own }, hChildren: children },
  };
}

/** Nearest mark; a finer one where the mark would change the measure by more than `COARSE` of it. */
function onMarks(length: Length, mark: Length, fine: Length): Length {
  const nearest = toMarks(length, mark, 'nearest');
  const off = nearest.minus(length).abs();
  return off.moreThan(length.abs().times(COARSE)) ? toMarks(length, fine, 'nearest') : nearest;
}

function figure(lengths: readonly Length[], system: System): ElementContent[] {
  const typeset = span(['measure-figure'], [text(typesetFractions(formatLengths(lengths, system)))]);
  typeset.properties.ariaHidden = 'true';
  return [typeset, span(['measure-spoken'], [text(spokenLengths(lengths, system))])];
}

function bracket(character: string): Element {
  return span(['measure-bracket'], [text(character)]);
}

function span(className: string[], children: ElementContent[]): Element {
  return { type: 'element', tagName: 'span', properties: { className }, children };
}

function text(value: string): ElementContent {
  return { type: 'text', value };
}
