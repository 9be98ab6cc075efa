import { describe, expect, it } from 'vitest';
import { arrange } from '../../site/lib/arrangement.ts';
import type { BodyPart, PlaceName } from '../../site/lib/places.ts';

const text: BodyPart = { kind: 'html', html: '<p>Fold it.</p>' };
const placed = (place: PlaceName, card?: string): BodyPart => ({ kind: 'place', place, card });

/** The whole page in order: `text` for the author's, else place and cards. */
function page(body: readonly BodyPart[], keys: readonly string[]): string {
  const { before, after } = arrange(body, keys);
  const say = ({ place, cards }: { place: string; cards: readonly string[] }) => [place, ...cards].join(' ');
  return [...before.map(say), 'text', ...after.map(say)].join(', ');
}

describe('the usual order', () => {
  it('of a post with one card', () => {
    expect(page([text], ['card'])).toBe(
      'drawing card, measurements card, supplies, text, layers card, template, dry-fit card',
    );
  });

  it('of a post with two cards', () => {
    expect(page([text], ['gate', 'jetty'])).toBe(
      'drawing gate jetty, measurements gate jetty, supplies, text, layers gate jetty, template, dry-fit gate jetty',
    );
  });

  it('of a post without a card: there is nothing to draw, print or fit', () => {
    expect(page([text], [])).toBe('supplies, text');
  });
});

describe('what the author has placed', () => {
  it('stands once: in her text', () => {
    const body = [
      placed('drawing'),
      text,
      placed('supplies'),
      placed('template'),
      placed('measurements'),
      placed('layers'),
      placed('dry-fit'),
    ];
    expect(page(body, ['gate', 'jetty'])).toBe('text');
  });

  it('leaves the other card where it usually stands', () => {
    expect(page([text, placed('drawing', 'gate')], ['gate', 'jetty'])).toBe(
      'drawing jetty, measurements gate jetty, supplies, text, layers gate jetty, template, dry-fit gate jetty',
    );
  });

  it('takes its measurements along: no table stands before its drawing', () => {
    expect(page([text, placed('drawing')], ['card'])).toBe(
      'supplies, text, measurements card, layers card, template, dry-fit card',
    );
  });

  it('counts for the whole post where it belongs to the whole post', () => {
    expect(page([placed('template', 'gate'), text, placed('supplies')], ['gate', 'jetty'])).toBe(
      'drawing gate jetty, measurements gate jetty, text, layers gate jetty, dry-fit gate jetty',
    );
  });
});
