import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { inflate } from '@sparticuz/chromium';
import { takeLock } from '../../../plugins/astro/process-lock.mjs';

/** A browser program and what its environment must hold. */
export interface BrowserProgram {
  readonly path: string;
  readonly env: Readonly<Record<string, string>>;
}

/**
 * Unpacks the browser that comes with the packages, with its own libraries and fonts, once per version.
 *
 * Its NSS and NSPR are used although the machine may have them: a bare machine does not. The fonts configuration is
 * written here, because the packaged one names folders of another place.
 *
 * @param cache folder that outlives the run; the browser takes about 210 MB
 */
export async function unpackBrowser(cache: string): Promise<BrowserProgram> {
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    throw new Error(`The packaged browser is for Linux x64 only; set CHROMIUM_PATH to a Chromium of this machine.`);
  }
  const archives = join(packageFolder(), 'bin');
  const folder = join(cache, `browser-${packagedVersion()}`);
  if (!existsSync(folder)) {
    const lock = await takeLock(join(cache, 'unpacking'));
    try {
      if (!existsSync(folder)) await unpackInto(folder, archives);
    } finally {
      lock.release();
    }
  }
  const libraries = [join(folder, 'al2023', 'lib'), process.env.LD_LIBRARY_PATH].filter(Boolean).join(':');
  return {
    path: join(folder, 'chromium'),
    env: { LD_LIBRARY_PATH: libraries, FONTCONFIG_FILE: join(folder, 'fonts.conf') },
  };
}

/** The folder appears in one step, so that a killed run leaves none that looks finished. */
async function unpackInto(folder: string, archives: string): Promise<void> {
  const part = `${folder}.part`;
  rmSync(part, { recursive: true, force: true });
  mkdirSync(part, { recursive: true });
  const before = process.env.TMPDIR;
  process.env.TMPDIR = part; // the package unpacks into the folder for temporary files, and knows no other way
  try {
    for (const archive of ['chromium.br', 'al2023.tar.br', 'fonts.tar.br']) await inflate(join(archives, archive));
  } finally {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
  }
  writeFileSync(join(part, 'fonts.conf'), fontsConfiguration(folder));
  renameSync(part, folder);
}

function fontsConfiguration(folder: string): string {
  return [
    '<?xml version="1.0"?>',
    '<!DOCTYPE fontconfig SYSTEM "fonts.dtd">',
    '<fontconfig>',
    `  <dir>${join(folder, 'fonts')}</dir>`,
    '  <dir>/usr/share/fonts</dir>',
    `  <cachedir>${join(folder, 'fonts-cache')}</cachedir>`,
    '</fontconfig>',
    '',
  ].join('\n');
}

function packagedVersion(): string {
  return (JSON.parse(readFileSync(join(packageFolder(), 'package.json'), 'utf8')) as { version: string }).version;
}

/** By `require`, since the test runner has no `import.meta.resolve`. */
function packageFolder(): string {
  return join(dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium')), '..');
}
