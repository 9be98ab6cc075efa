import { creaseName } from './card-pieces.ts';
import { type Report, suggest } from './report.ts';
import type { Fold, PieceSpec, Pose, PoseSpec, StripSpec } from './types.ts';

interface CreaseId {
  readonly piece: string;
  readonly crease: string;
}

type Turn = 'flat' | 'shut';

/** Every crease of a fold, piece by piece: those that run down, then those that run across. */
export function creasesOfFold(pieces: readonly PieceSpec[]): CreaseId[] {
  const names = (strip: StripSpec | undefined): string[] =>
    strip?.creases.map((crease, index) => creaseName(strip, crease, index)) ?? [];
  return pieces.flatMap((piece) =>
    [...names(piece.across), ...names(piece.down)].map((crease) => ({ piece: piece.name, crease })),
  );
}

/** Checks that every pose speaks of creases that are there, and of each only once. */
export function checkPoses(fold: Fold, report: Report): void {
  const creases = creasesOfFold(fold.pieces);
  const pieces = fold.pieces.map(({ name }) => name);
  for (const pose of fold.poses) {
    const seen = new Map<CreaseId, string>();
    for (const { target, path } of pose.settings) {
      const name = target.text;
      if (name === 'all' || name === 'others' || pieces.includes(name)) continue;
      const found = creases.filter((crease) => isNamed(crease, name));
      if (found.length === 0) {
        const known = [...new Set(creases.map(({ crease }) => crease))];
        const takes = [...known, 'all', 'others'].join(', ');
        const qualified = creases.map(({ piece, crease }) => `${piece}.${crease}`);
        const remedy = suggest(name, [...known, ...qualified, ...pieces, 'all', 'others'], `Write one of ${takes}.`);
        report.at(target.place, path, {
          code: 'unknown-crease',
          wrote: name || 'a line without a name',
          takes,
          remedy,
        });
      } else if (found.length > 1) {
        const choices = found.map(({ piece, crease }) => `\`${piece}.${crease}\``).join(' or ');
        const takes = 'a crease, with its piece when two pieces have one of that name';
        report.at(target.place, path, { code: 'ambiguous-crease', wrote: name, takes, remedy: `Write ${choices}.` });
      }
      const [only] = found;
      const other = only && found.length === 1 ? seen.get(only) : undefined;
      if (other !== undefined) {
        const remedy = `\`${other}\` and \`${name}\` are the same crease. Keep one of them.`;
        report.at(target.place, path, { code: 'crease-twice', wrote: name, takes: 'each crease once', remedy });
      }
      if (only && found.length === 1) seen.set(only, name);
    }
    checkRest(pose, report);
  }
}

/** `all` and `others` both speak of the creases that are not named. */
function checkRest(pose: PoseSpec, report: Report): void {
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

function isNamed({ piece, crease }: CreaseId, name: string): boolean {
  return crease === name || `${piece}.${crease}` === name;
}

/**
 * The poses with a turn for every crease, `open` and `closed` among them.
 *
 * A crease that is named, by itself or through its piece, does as it says; the rest do as `all` or `others` says, else they
 * stay as they were in the pose before, flat before the first. `{}` shuts everything.
 */
export function resolvePoses(fold: Fold): Pose[] {
  const creases = creasesOfFold(fold.pieces);
  const has = (name: string): boolean => fold.poses.some((pose) => pose.name === name);
  const every = (name: string, turn: Turn): Pose => ({ name, turns: creases.map((crease) => ({ ...crease, turn })) });
  let before = every('', 'flat');
  const written = fold.poses.map((pose): Pose => {
    const turns = before.turns.map((last) => ({ ...last, turn: turnIn(pose, last, last.turn) }));
    before = { name: pose.name, turns };
    return before;
  });
  return [
    ...(has('open') ? [] : [every('open', 'flat')]),
    ...written,
    ...(has('closed') ? [] : [every('closed', 'shut')]),
  ];
}

function turnIn(pose: PoseSpec, crease: CreaseId, before: Turn): Turn {
  if (pose.settings.length === 0) return 'shut';
  const said = (matches: (name: string) => boolean): Turn | undefined => {
    const turn = pose.settings.find(({ target }) => matches(target.text))?.turn;
    return turn === 'keep' ? before : turn;
  };
  return (
    said((name) => isNamed(crease, name)) ??
    said((name) => name === crease.piece) ??
    said((name) => name === 'all' || name === 'others') ??
    before
  );
}
