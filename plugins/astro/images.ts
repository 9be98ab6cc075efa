import { existsSync, readdirSync } from 'node:fs';
import path from 'node:path';
import type { SourceFile } from '../content/index.ts';
import { nearestName, type Place, type Problem } from '../engine/index.ts';

/** Images of a text that are meant to lie beside it and do not. */
export function missingImages(file: SourceFile, images: readonly string[], root: string): readonly Problem[] {
  const folder = path.dirname(path.resolve(root, file.path));
  return images
    .filter((image) => !URL.canParse(image) && !existsSync(path.resolve(folder, image)))
    .map((image) => missing(file, image, folder));
}

function missing(file: SourceFile, image: string, folder: string): Problem {
  const within = path.dirname(image);
  const beside = readdirSync(folder).filter((name) => !name.endsWith('.md'));
  const near = within === '.' ? nearestName(path.basename(image), beside) : undefined;
  return {
    code: 'image-missing',
    severity: 'error',
    place: placeOf(file, image),
    path: '',
    wrote: image,
    takes:
      beside.length === 0
        ? 'an image that lies beside the text'
        : `an image beside the text: ${beside.sort().join(', ')}`,
    remedy:
      near === undefined
        ? 'Put the image into the folder of the text, or correct its name.'
        : `Did you mean \`${near}\`?`,
  };
}

/** Where the text first names the image; its first line when it is written in some other way there. */
function placeOf({ path: name, text }: SourceFile, image: string): Place {
  const at = [image, encodeURI(image)].map((written) => text.indexOf(`(${written}`)).find((offset) => offset !== -1);
  if (at === undefined) return { file: name, line: 1, column: 1 };
  const before = text.slice(0, at + 1).split('\n');
  return { file: name, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}
