/** A post with its own parameters, as Markdown. */
export interface GeneratedPost {
  readonly slug: string;
  readonly text: string;
}

const KINDS = ['side-fold', 'top-fold', 'gate', 'short-front'];
const BIRDS = ['curlew', 'dunlin', 'knot', 'redshank', 'turnstone', 'whimbrel', 'godwit'];

/**
 * Posts about as long as a short tutorial, each with another size, so that nothing that is computed for one serves
 * another. Invented.
 */
export function generatePosts(count: number): GeneratedPost[] {
  return Array.from({ length: count }, (_, i) => {
    const kind = KINDS[i % KINDS.length] ?? '';
    const bird = BIRDS[i % BIRDS.length] ?? '';
    // Sizes in sixteenths, 3 to 4 3/4 in wide and 4 to 5 3/4 in high: 28 x 28 pairs for each kind.
    const width = sixteenths(48 + (Math.floor(i / KINDS.length) % 28));
    const height = sixteenths(64 + (Math.floor(i / (KINDS.length * 28)) % 28));
    return {
      slug: `bench-${String(i + 1).padStart(4, '0')}`,
      text: post(`A ${bird}, number ${i + 1}`, kind, width, height),
    };
  });
}

function sixteenths(count: number): string {
  const rest = count % 16;
  return rest === 0 ? `${count / 16}` : `${Math.floor(count / 16)} ${rest}/16`;
}

function post(title: string, kind: string, width: string, height: string): string {
  return `---
title: ${title}
summary: A card of ${width} x ${height} in, made to be measured.
date: 2026-10-01
units: in
fold: { ${kind}: { width: ${width}, height: ${height} } }
---

The tide table on the studio wall says low water at 10:30, which leaves the morning for this card. It measures
${width} x ${height} in when it is closed, and nothing about it is hard.

## Cut and score

Cut the base on the trimmer and put it into the corner of the scoring board, long edge at the top. Fold along the score
so that the groove is on the outside, and run the bone folder along it once. A panel ${width} in wide would cover the
front completely, so cut yours 1/4 in smaller both ways and keep a border of 1/8 in all round.

::drawing

## Put it together

1. Blend the palest ink over the upper half of the panel.
2. Lay the stencil along its foot, and blend the darker tone through it.
3. Let it dry for a minute, then turn it by 2 1/2 in and repeat.
4. Run tape round the back, 1/8 in from the edge, and set it down on one corner first.

> If the corners miss by a hair, look at the cut before you blame the score.

## Before you post it

Press the card under a book for as long as it takes the kettle to boil. Then try it in its envelope, and only then
write the address. The **grain** should run along the spine; *against* it the fold cracks.
`;
}
