import { findNamedSize, type NamedSize, type System } from '../../plugins/engine/index.ts';

/** A template beside a project's page. */
export interface TemplateFile {
  readonly file: string;
  readonly system: System;
  readonly sheet: NamedSize;
}

/** The two templates: each edition on the sheet its readers have in the printer. */
export function templateFiles(): readonly TemplateFile[] {
  return [
    { file: 'template-letter.pdf', system: 'inch', sheet: sheetNamed('US Letter') },
    { file: 'template-a4.pdf', system: 'metric', sheet: sheetNamed('ISO A4') },
  ];
}

function sheetNamed(name: string): NamedSize {
  const { value } = findNamedSize(name, 'sheet');
  if (value === undefined) throw new Error(`The engine knows no sheet named ${name}.`);
  return value;
}
