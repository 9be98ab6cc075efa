import type { Place } from '../diagnostics/index.ts';
import type { PoseSpec } from './assembly-specs.ts';
import type { Pose } from './card-types.ts';
import { type Said, speaksOf } from './pose-turns.ts';
import { type Report, suggest } from './report.ts';

/** A crease that is named twice by names of one rank would do two things at once. */
export function checkTwice(said: readonly Said[], report: Report): void {
  said.forEach(({ written, target }, index) => {
    if (target.is !== 'creases') return;
    const other = said
      .slice(0, index)
      .find(
        (earlier) =>
          earlier.target.is === 'creases' &&
          earlier.target.rank === target.rank &&
          target.creases.some((crease) => speaksOf(earlier.target, crease)),
      );
    if (other === undefined) return;
    const name = written.target.text;
    const remedy = `\`${other.written.target.text}\` and \`${name}\` are the same crease. Keep one of them.`;
    report.at(written.target.place, written.path, {
      code: 'crease-twice',
      wrote: name,
      takes: 'each crease once',
      remedy,
    });
  });
}

/** `all` and `others` both speak of the creases that are not named. */
export function checkAll(pose: PoseSpec, report: Report): void {
  const all = pose.settings.find(({ target }) => target.text === 'all');
  const others = pose.settings.find(({ target }) => target.text === 'others');
  if (all === undefined || others === undefined) return;
  report.at(others.target.place, others.path, {
    code: 'all-and-others',
    wrote: 'all and others',
    takes: '`all` or `others`',
    remedy: 'Keep one of the two: both speak of the creases that are not named.',
  });
}

/** The pose of a name; reports one that is not there. */
export function checkPoseName(
  name: { readonly text: string; readonly place: Place },
  path: string,
  poses: readonly Pose[],
  report: Report,
): boolean {
  if (poses.some((pose) => pose.name === name.text)) return true;
  const known = poses.map((pose) => pose.name);
  const takes = `a pose: ${known.join(', ')}`;
  const remedy = suggest(
    name.text,
    known,
    `Write one of ${known.join(', ')}, or add \`${name.text}\` under \`poses\`.`,
  );
  report.at(name.place, path, { code: 'unknown-pose', wrote: name.text, takes, remedy });
  return false;
}
