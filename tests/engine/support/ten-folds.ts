/*
 * Folds that between them use the whole language, as a maker would write them. Sizes in inches; `in-mm` tests replace the unit, since
 * every size of theirs is a whole number of millimetres or a fraction that a ruler has.
 */

export const BRIDGE = `
name: Bridge
units: in
parameters:
  width: 6
  depth: 3
  height: 5
  strip: 1 1/2
  level: { choose: { top: 0, centre: (height - strip)/2, foot: height - strip }, default: top }
pieces:
  base: { across: [wing depth, valley inner, side depth, valley outer, back width], down: height }
  bridge: { across: [tab depth, valley corner, end depth, valley turn, span width], down: strip }
  ornament: { circle: 1 1/2 }
joins:
  - { glue: bridge.tab, onto: base.back, lay: corner along right, after: level }
  - { glue: bridge.span, onto: base.wing, lay: right along inner, after: level }
  - { hang: ornament.top, from: bridge.bottom, after: 2*depth + (width - depth)/2, thread: 1/2 }
poses:
  closed: { outer: shut, turn: shut, others: flat }
  display: { outer: 90, stands: base.bottom }
`;

export const TWISTING_EASEL = `
name: Twisting easel
units: in
parameters: { side: 5 1/2, disc: 2 }
pieces:
  base: { across: [wing side/2, mountain knee, strut side/2, valley spine, back side], down: side }
  front: { size: side x side, marks: { middle: middle down } }
  disc(k): { each: k from 1 to 2, circle: disc, creases: { fold: middle down } }
joins:
  - { each: k from 1 to 2, glue: disc(k).left, onto: base.wing, lay: fold along knee, after: side*(2*k - 1)/4 - disc/2 }
  - { each: k from 1 to 2, glue: back of disc(k).right, onto: back of front, lay: fold along middle, after: side*(2*k - 1)/4 - disc/2 }
poses:
  closed: {}
  standing: { spine: 60, knee: 90, disc(1).fold: 150, stands: base.bottom front.bottom }
`;

export const TRI_SHUTTER = `
name: Tri-shutter
units: in
parameters: { flap: 2, height: 7, inset: 1 1/2 }
pieces:
  sheet:
    size: 6*flap x height
    cuts: { slit: { top: [inset, height - inset], from: flap, to: 5*flap } }
    creases:
      outer: { left: [flap, 5*flap], fold: [valley, mountain, valley] }
      inner: { left: [2*flap, 4*flap], fold: [mountain, valley, mountain] }
poses:
  open: { all: flat }
  half: { all: 90 }
  closed: { all: shut }
`;

export const V_FOLD = `
name: V-fold in a side fold
units: in
parameters: { page: 4 1/4, tall: 5 1/2, apex: 2, alpha: 50 deg, beta: 70 deg, foot: 2, rise: 2 1/2 }
pieces:
  base:
    across: [left page, valley spine, right page]
    down: tall
    marks: { line-(s): { each: s in left right, start: spine at apex, off: spine, by: alpha, towards: bottom-(s), long: foot } }
  pop:
    size: 2*foot x rise
    creases:
      ridge: middle down
      foot-(s): { each: s in left right, start: bottom, off: ridge, by: beta, towards: top-(s), fold: mountain }
joins:
  - { each: s in left right, glue: face of pop.bottom-(s), onto: base.(s), lay: foot-(s) along line-(s) }
poses:
  closed: {}
  half: { spine: 90 }
  open: { spine: flat }
`;

export const SWING = `
name: Swing card
units: in
parameters: { die: 2 1/2 }
pieces:
  card:
    across: [flap 2 3/4, mountain swing, strip 1 3/8, valley spine, back 4 1/8]
    down: 5 1/2
    shapes: { disc: { circle: die, at: [2 3/4, 2 3/4], stays-with: strip } }
poses:
  closed: { spine: shut, swing: flat }
  swung: { spine: shut, swing: shut }
  open: { all: flat }
`;

export const SLIDER = `
name: Pull slider
units: in
parameters: { width: 4 1/4, tall: 5 1/2, slit: 3, gap: 1 3/4, long: width - 1/4 }
pieces:
  card:
    across: [front width, valley spine, back width]
    down: tall
    cuts: { slit: { left: [(width - gap)/2, (width + gap)/2], from: (tall - slit)/2, to: (tall + slit)/2 } }
  slider: { size: long x slit - 1/8 }
joins:
  - { slide: slider, in: outside of card.front, through: slit(1) slit(2), shows: between, keep: 1/2 }
poses:
  closed: { spine: shut, slider: middle }
  pulled: { spine: shut, slider: end }
`;

export const EXPLOSION = `
name: Explosion insert
units: in
parameters: { side: 5 1/2, margin: 1/4 }
pieces:
  base: { across: [left side/2 + margin, valley spine, right side/2 + margin], down: side + 2*margin }
  insert:
    size: side x side
    creases:
      falling: top-left to bottom-right
      rising: bottom-left to top-right
      half: { middle: down, fold: mountain }
joins:
  - { each: s in left right, glue: insert.(s), onto: base.(s), lay: half along spine, after: margin }
poses:
  closed: {}
  half: { spine: 90 }
  open: { spine: flat }
`;

export const SHAKER = `
name: Shaker front
units: in
parameters: { width: 4 1/4, height: 5 1/2, border: 3/4, foam: 1/8 }
pieces:
  frame: { size: width x height, windows: { window: { inset: border } } }
  film: { size: width - border x height - border, stock: clear film }
  ring: { size: width - 1/4 x height - 1/4, windows: { chamber: { inset: border - 1/4 } }, stock: foam, thick: foam }
  backing: { size: width x height }
stack: [backing, ring, film, frame]
fill:
  beads: { in: ring.chamber, stock: beads, full: 1/3 }
acts-as: backing
`;

export const EASEL = `
name: Easel
units: in
parameters: { width: 4 1/4, height: 5 1/2, stop: height/2 }
pieces:
  base: { across: width, down: [flap height/2, mountain knee, strut height/2, valley spine, floor height] }
  front: { size: width x height }
joins:
  - { glue: front, onto: base.flap, match: top-left }
  - { rest: front.bottom, upon: base.floor, from: spine, away: stop }
poses:
  closed: {}
  standing: { rests: yes, ground: base.floor }
`;

export const EXPLODING_BOX = `
name: Exploding box
units: in
parameters: { side: 4, high: 4, step: 1/2, drop: 1 1/2, play: 1/16, layers: { count: 3, from: 1, to: 5 } }
pieces:
  layer(k):
    each: k from 1 to layers
    across: [left high, valley, middle side - (k - 1)*step, valley, right high]
    down: [head high, valley, middle side - (k - 1)*step, valley, foot high]
    corners: away
  lid:
    across: [left drop, valley, middle side + play, valley, right drop]
    down: [head drop, valley, middle side + play, valley, foot drop]
    corners: tabs
joins:
  - { each: k from 2 to layers, glue: layer(k).middle.middle, onto: layer(k - 1).middle.middle }
  - { slip: lid.middle.middle, over: layer(1), play: play }
poses:
  boxed: { all: 90, ground: layer(1).middle.middle }
  lid-off: { all: 90, aside: lid }
  exploded: { all: flat, lid: 90, aside: lid }
posts: boxed
`;

export const SHAKER_ON_EASEL = `
name: Shaker on an easel
units: in
parameters: { width: 4 1/4, height: 5 1/2 }
use:
  easel: { width: width, height: height }
  shaker: { width: width, height: height }
replace: { front: shaker }
`;
