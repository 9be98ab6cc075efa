import { Length, type System, toMarks } from '../../plugins/engine/index.ts';

/** What a caliper shows. Layers are told in decimals throughout, so that they can be added up. */
const CALIPER_MARKS: Readonly<Record<System, Length>> = {
  inch: Length.fromInches('1/1000'),
  metric: Length.fromMm('1/100'),
};

/** `0.011 in`, `0.28 mm`. */
export function formatThickness(length: Length, system: System): string {
  return `${figure(length, system)} ${system === 'inch' ? 'in' : 'mm'}`;
}

/** `0.011 inches`, `0.28 millimetres`. */
export function spokenThickness(length: Length, system: System): string {
  return `${figure(length, system)} ${system === 'inch' ? 'inches' : 'millimetres'}`;
}

function figure(length: Length, system: System): string {
  const shown = toMarks(length, CALIPER_MARKS[system], 'nearest');
  return system === 'inch' ? shown.inches.valueOf().toFixed(3) : shown.mm.valueOf().toFixed(2);
}
