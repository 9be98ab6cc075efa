/** Text made safe inside an XML element or a double-quoted attribute; characters XML does not allow become U+FFFD. */
export function escapeXml(text: string): string {
  let safe = '';
  for (const character of text) safe += escapeCharacter(character, character.codePointAt(0) ?? 0);
  return safe;
}

/** XML 1.0, production 2 (Char): what may not stand in a document even as a reference. */
function escapeCharacter(character: string, code: number): string {
  const control = code < 0x20 && code !== 0x9 && code !== 0xa && code !== 0xd;
  const lone = code >= 0xd800 && code <= 0xdfff;
  if (control || lone || code === 0xfffe || code === 0xffff) return '\ufffd';
  switch (character) {
    case '&':
      return '&amp;';
    case '<':
      return '&lt;';
    case '>':
      return '&gt;';
    case '"':
      return '&quot;';
    case "'":
      return '&#39;';
    default:
      return character;
  }
}

/** Text made safe as an XML name for ids: letters, digits, hyphens; starts with a letter. */
export function safeId(text: string): string {
  const id = text.replace(/[^A-Za-z0-9-]+/g, '-');
  return /^[A-Za-z]/.test(id) ? id : `s${id}`;
}

/** A number for SVG, rounded to 0.001: the only place where a drawing's numbers are rounded. */
export function round(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a drawing holds the number ${value}`);
  const rounded = Math.round(value * 1000) / 1000;
  return String(rounded === 0 ? 0 : rounded);
}
