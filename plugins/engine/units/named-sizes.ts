import Fraction from 'fraction.js';
import type { Length } from './length.ts';
import type { Unit } from './system.ts';
import { lengthOf } from './unit.ts';

export type SizeUse = 'sheet' | 'envelope' | 'card';

/** A size that the trade or a standard calls by name. */
export interface NamedSize {
  /** Unique: `us-a2-envelope`, `iso-a6-sheet`. */
  readonly id: string;
  /** Qualified, so that it means one size: `US A2`, `ISO A6`. A sheet, an envelope and a card may share a name. */
  readonly name: string;
  readonly use: SizeUse;
  /** Sheets and cards stand upright, envelopes lie on their long side. */
  readonly width: Length;
  readonly height: Length;
  /** The unit it is defined in. */
  readonly unit: Unit;
  readonly source: string;
}

const ISO_216 = 'ISO 216:2007';
const ISO_216_MEMORY = 'ISO 216:2007, from memory';
const ISO_269 = 'ISO 269';
const ANSI = 'ANSI/ASME Y14.1';
const TRADE = 'published US trade lists; trade names, not a standard';
const TRADE_MEMORY = 'US trade, from memory';
const PRACTICE = 'common practice, no source';

type Row = readonly [name: string, width: string, height: string, source: string];

const SHEETS_MM: readonly Row[] = [
  ['ISO A0', '841', '1189', ISO_216],
  ['ISO A1', '594', '841', ISO_216],
  ['ISO A2', '420', '594', ISO_216],
  ['ISO A3', '297', '420', ISO_216],
  ['ISO A4', '210', '297', ISO_216],
  ['ISO A5', '148', '210', ISO_216],
  ['ISO A6', '105', '148', ISO_216],
  ['ISO A7', '74', '105', ISO_216],
  ['ISO A8', '52', '74', ISO_216_MEMORY],
  ['ISO A9', '37', '52', ISO_216_MEMORY],
  ['ISO A10', '26', '37', ISO_216_MEMORY],
  ['ISO B4', '250', '353', ISO_216],
  ['ISO B5', '176', '250', ISO_216],
  ['ISO B6', '125', '176', ISO_216],
];

const SHEETS_IN: readonly Row[] = [
  ['US Letter', '8.5', '11', ANSI],
  ['US Legal', '8.5', '14', 'published US trade lists; not in ANSI/ASME Y14.1'],
  ['US Tabloid', '11', '17', ANSI],
  ['US C', '17', '22', ANSI],
  ['US D', '22', '34', ANSI],
  ['US E', '34', '44', ANSI],
  ['12 x 12 in', '12', '12', PRACTICE],
  ['6 x 6 in', '6', '6', PRACTICE],
];

const ENVELOPES_MM: readonly Row[] = [
  ['ISO DL', '220', '110', ISO_269],
  ['ISO C7', '114', '81', 'C series of ISO 269'],
  ['ISO C7/C6', '162', '81', ISO_269],
  ['ISO C6', '162', '114', ISO_269],
  ['ISO C6/C5', '229', '114', ISO_269],
  ['ISO C5', '229', '162', ISO_269],
  ['ISO C4', '324', '229', ISO_269],
  ['ISO C3', '458', '324', ISO_269],
  ['ISO B6', '176', '125', ISO_269],
  ['ISO B5', '250', '176', ISO_269],
  ['ISO B4', '353', '250', ISO_269],
  ['ISO E4', '400', '280', ISO_269],
];

const ENVELOPES_IN: readonly Row[] = [
  ['US A1', '5.125', '3.625', TRADE],
  ['US 4-Bar', '5.125', '3.625', TRADE_MEMORY],
  ['US A2', '5.75', '4.375', TRADE],
  ['US A6', '6.5', '4.75', TRADE],
  ['US A7', '7.25', '5.25', TRADE],
  ['US A8', '8.125', '5.5', TRADE],
  ['US A9', '8.75', '5.75', TRADE_MEMORY],
  ['US A10', '9.5', '6', TRADE],
  ['US Slimline', '8.875', '3.875', TRADE],
  ['US #6 3/4', '6.5', '3.625', TRADE],
  ['US #9', '8.875', '3.875', TRADE],
  ['US #10', '9.5', '4.125', TRADE],
  ['5 x 5 in', '5', '5', PRACTICE],
  ['5 1/2 x 5 1/2 in', '5.5', '5.5', PRACTICE],
  ['6 x 6 in', '6', '6', PRACTICE],
  ['6 1/2 x 6 1/2 in', '6.5', '6.5', PRACTICE],
  ['7 x 7 in', '7', '7', PRACTICE],
  ['7 1/2 x 7 1/2 in', '7.5', '7.5', PRACTICE],
];

const CARDS_IN: readonly Row[] = [
  ['US A1', '3.5', '4.875', TRADE],
  ['US A2', '4.25', '5.5', TRADE],
  ['US A6', '4.5', '6.25', TRADE],
  ['US A7', '5', '7', TRADE],
  ['US A8', '5.25', '7.875', TRADE],
  ['US A9', '5.5', '8.5', TRADE_MEMORY],
  ['US Slimline', '3.5', '8.5', TRADE],
  ['5 x 7 in', '5', '7', PRACTICE],
  ['6 x 6 in', '6', '6', PRACTICE],
  ['8 x 8 in', '8', '8', PRACTICE],
];

const CARDS_MM: readonly Row[] = [
  ['ISO A6', '105', '148', PRACTICE],
  ['ISO A5', '148', '210', PRACTICE],
  ['ISO C6', '114', '162', PRACTICE],
  ['ISO DL', '99', '210', PRACTICE],
];

/** Every size known by name, sheets first, in the order of the lists they come from. */
export const NAMED_SIZES: readonly NamedSize[] = [
  ...SHEETS_MM.map(sizeFrom('sheet', 'mm')),
  ...SHEETS_IN.map(sizeFrom('sheet', 'in')),
  ...ENVELOPES_MM.map(sizeFrom('envelope', 'mm')),
  ...ENVELOPES_IN.map(sizeFrom('envelope', 'in')),
  ...CARDS_IN.map(sizeFrom('card', 'in')),
  ...CARDS_MM.map(sizeFrom('card', 'mm')),
];

function sizeFrom(use: SizeUse, unit: Unit): (row: Row) => NamedSize {
  return ([name, width, height, source]) => ({
    id: sizeId(name, use),
    name,
    use,
    width: lengthOf(new Fraction(width), unit),
    height: lengthOf(new Fraction(height), unit),
    unit,
    source,
  });
}

/** `US #6 3/4` as an envelope is `us-6-3-4-envelope`. */
export function sizeId(name: string, use: SizeUse): string {
  return `${name} ${use}`
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}
