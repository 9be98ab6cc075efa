/** Published sizes, as their tables give them: short side first, whatever way round the paper lies. */
export interface PublishedSize {
  readonly name: string;
  readonly use: 'sheet' | 'envelope' | 'card';
  readonly unit: 'mm' | 'in';
  readonly sides: readonly [number, number];
}

/** Cited as "ISO 216": A and B series. */
export const ISO_216: readonly PublishedSize[] = (
  [
    ['A0', 841, 1189],
    ['A1', 594, 841],
    ['A2', 420, 594],
    ['A3', 297, 420],
    ['A4', 210, 297],
    ['A5', 148, 210],
    ['A6', 105, 148],
    ['A7', 74, 105],
    ['B4', 250, 353],
    ['B5', 176, 250],
    ['B6', 125, 176],
  ] as const
).map(([name, a, b]) => ({ name: `ISO ${name}`, use: 'sheet', unit: 'mm', sides: [a, b] }));

/** Cited as "ISO 269": correspondence envelopes; C7 is listed with the C series. */
export const ISO_269: readonly PublishedSize[] = (
  [
    ['DL', 110, 220],
    ['C7', 81, 114],
    ['C7/C6', 81, 162],
    ['C6', 114, 162],
    ['C6/C5', 114, 229],
    ['C5', 162, 229],
    ['C4', 229, 324],
    ['C3', 324, 458],
    ['B6', 125, 176],
    ['B5', 176, 250],
    ['B4', 250, 353],
    ['E4', 280, 400],
  ] as const
).map(([name, a, b]) => ({ name: `ISO ${name}`, use: 'envelope', unit: 'mm', sides: [a, b] }));

/** Cited as "Y14.1"; Legal is a trade size outside that standard. */
export const US_SHEETS: readonly PublishedSize[] = (
  [
    ['US Letter', 8.5, 11],
    ['US Legal', 8.5, 14],
    ['US Tabloid', 11, 17],
    ['US C', 17, 22],
    ['US D', 22, 34],
    ['US E', 34, 44],
  ] as const
).map(([name, a, b]) => ({ name, use: 'sheet', unit: 'in', sides: [a, b] }));

/** The same sheets in millimetres, as computed tables of them print. */
export const US_SHEETS_MM: ReadonlyMap<string, readonly [number, number]> = new Map([
  ['US Letter', [215.9, 279.4]],
  ['US Legal', [215.9, 355.6]],
  ['US Tabloid', [279.4, 431.8]],
  ['US C', [431.8, 558.8]],
  ['US D', [558.8, 863.6]],
  ['US E', [863.6, 1117.6]],
]);

export interface PublishedEnvelope extends PublishedSize {
  /** Length over height, as published. */
  readonly ratio: number;
  /** The largest insert the lists give; undefined where none is given. */
  readonly insert: readonly [number, number] | undefined;
  /** The card sold for it; undefined where none is named. */
  readonly card: readonly [number, number] | undefined;
}

/** US announcement and commercial envelopes, from published trade lists. 4-Bar and A9 are from memory. */
export const US_ENVELOPES: readonly PublishedEnvelope[] = (
  [
    ['US A1', 3.625, 5.125, Math.SQRT2, [3.5, 4.75], [3.5, 4.875]],
    ['US 4-Bar', 3.625, 5.125, Math.SQRT2, undefined, undefined],
    ['US A2', 4.375, 5.75, 1.314, [4.125, 5.5], [4.25, 5.5]],
    ['US A6', 4.75, 6.5, 1.368, [4.5, 6.25], [4.5, 6.25]],
    ['US A7', 5.25, 7.25, 1.381, [5, 7], [5, 7]],
    ['US A8', 5.5, 8.125, 1.477, [5.25, 7.875], [5.25, 7.875]],
    ['US A9', 5.75, 8.75, 1.522, undefined, [5.5, 8.5]],
    ['US A10', 6, 9.5, 1.583, [5.75, 9.25], undefined],
    ['US Slimline', 3.875, 8.875, 2.29, [3.625, 8.625], [3.5, 8.5]],
    ['US #6 3/4', 3.625, 6.5, 1.793, undefined, undefined],
    ['US #9', 3.875, 8.875, 2.29, undefined, undefined],
    ['US #10', 4.125, 9.5, Math.LN10, undefined, undefined],
  ] as const
).map(([name, a, b, ratio, insert, card]) => ({
  name,
  use: 'envelope',
  unit: 'in',
  sides: [a, b],
  ratio,
  insert,
  card,
}));
