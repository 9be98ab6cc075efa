/*
 * Makes a piece from the sentences alone, as somebody does who does not see the drawing. Reads measures by itself, in mm.
 */

export interface MadePoint {
  readonly x: number;
  readonly y: number;
  /** Said to be about there. */
  readonly about: boolean;
}

export interface MadeLine {
  readonly does: 'crease' | 'cut' | 'perforation' | 'mark';
  readonly fold: 'valley' | 'mountain' | 'both' | undefined;
  readonly from: MadePoint;
  readonly to: MadePoint;
}

export interface MadeRegion {
  readonly does: 'cut out' | 'cut round' | 'cut away';
  /** Left, top, width and height. */
  readonly box: readonly [number, number, number, number];
}

export interface Made {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly MadeLine[];
  readonly regions: readonly MadeRegion[];
  /** Corners of an outline that is told corner by corner. */
  readonly path: readonly MadePoint[] | undefined;
}

const FOLDS = { 'a valley fold': 'valley', 'a mountain fold': 'mountain', 'a fold worked both ways': 'both' } as const;
const WORK =
  /^(?:Score (a valley fold|a mountain fold|a fold worked both ways)|(Cut a slit)|(Perforate a line)|(Mark a light line))/;

/** Throws for a sentence that tells of work in a way it does not know. */
export function makeFrom(words: readonly string[]): Made {
  const maker = new Maker();
  for (const sentence of words) maker.hear(sentence);
  return maker.done();
}

class Maker {
  #width = 0;
  #height = 0;
  /** True when distances across count from the right. */
  #fromRight = false;
  readonly #lines: MadeLine[] = [];
  readonly #regions: MadeRegion[] = [];
  #path: MadePoint[] | undefined;
  #work: Pick<MadeLine, 'does' | 'fold'> | undefined;
  #start: MadePoint | undefined;
  #region: { does: MadeRegion['does']; size: readonly [number, number] } | undefined;
  /** Corners of what is being followed: the outline, or a region. */
  #corners: MadePoint[] = [];

  hear(sentence: string): void {
    for (const [pattern, act] of this.#hearing) {
      const found = pattern.exec(sentence);
      if (!found) continue;
      act(found.slice(1).map((part) => part ?? ''));
      return;
    }
    throw new Error(`what does this ask for? ${sentence}`);
  }

  done(): Made {
    const [width, height] = [this.#width, this.#height];
    return { width, height, lines: this.#lines, regions: this.#regions, path: this.#path };
  }

  readonly #hearing: readonly (readonly [RegExp, (parts: readonly string[]) => void])[] = [
    [/^Cut the .+, a circle with a diameter of (.+)\.$/, ([d = '']) => this.#size(d, d)],
    [
      /^Cut the .+(?:,| from) an? (?:piece|ellipse) (.+) wide and (.+) high(?:, with round corners)?\.$/,
      ([w = '', h = '']) => this.#size(w, h),
    ],
    [
      /^Measure across from the (left|right) edge and down from the top edge\.$/,
      ([side]) => {
        this.#fromRight = side === 'right';
      },
    ],
    [
      /^Measure from the (left|right) edge\.$/,
      ([side]) => {
        this.#fromRight = side === 'right';
      },
    ],
    [/^Measure from the top edge\.$/, () => undefined],
    [/^(.+), at ([^,]+), (from .+)\.$/, ([what = '', at = '', extent = '']) => this.#straight(what, at, extent)],
    [/^It is at ([^,]+), (from .+)\.$/, ([at = '', extent = '']) => this.#straight('', at, extent)],
    [
      /^It starts at (.+)\.$/,
      ([point = '']) => {
        this.#start = this.#point(point);
      },
    ],
    [
      /^It ends at (.+)\.$/,
      ([point = '']) => {
        if (this.#work && this.#start) this.#lines.push({ ...this.#work, from: this.#start, to: this.#point(point) });
      },
    ],
    [/^It makes an angle of [\d.]+ degrees with .+, and is .+ long\.$|^It is .+ long\.$/, () => undefined],
    [/^The .+ is (an? .+|.+ wide and .+)\.$/, ([form = '']) => this.#begin('cut round', form)],
    [/^Cut out the .+?: (.+)\.$/, ([form = '']) => this.#begin('cut out', form)],
    [/^Cut away the (top|bottom) (left|right) corner, (.+) wide and (.+) high\.$/, (parts) => this.#corner(parts)],
    [/^Cut away the .+?, (.+)\.$/, ([form = '']) => this.#begin('cut away', form)],
    [/^Its centre is at (.+)\.$/, ([point = '']) => this.#centre(this.#point(point))],
    [
      /^Its (left|right) edge is at (.+) across, its top edge at (.+) down\.$/,
      ([side, x = '', y = '']) => this.#edges(side, x, y),
    ],
    [
      /^Start at (.+)\.$/,
      ([point = '']) => {
        this.#corners = [this.#point(point)];
      },
    ],
    [/^Go (?:straight|clockwise|anticlockwise) back to the start(?:, .+)?\.$/, () => this.#close()],
    [/^Go straight to (.+)\.$/, ([point = '']) => this.#corners.push(this.#point(point))],
    [
      /^Go (?:clockwise|anticlockwise) to (.+), along an arc of .+\.$/,
      ([point = '']) => this.#corners.push(this.#point(point)),
    ],
    [/^The centre of that arc is at .+\.$|^The radius of its corners is .+\.$/, () => undefined],
    [/^Cut round it only outside the .+\.$|^Do not cut it where it lies on the .+\.$/, () => undefined],
    [/^Lay it face up\.$|^It is of .+ thick\.$|^The grain of the paper runs .+\.$/, () => undefined],
    [
      /^From .+ the panels are .+\.$|^Then come .+\.$|^A .+ (?:brings the .+ together|is folded to and fro)\.$/,
      () => undefined,
    ],
    [
      WORK,
      ([fold = '', cut = '', perforate = '']) => {
        this.#work = workOf(fold, cut, perforate);
      },
    ],
  ];

  #size(width: string, height: string): void {
    [this.#width, this.#height] = [measured(width), measured(height)];
  }

  #across(text: string): number {
    return this.#fromRight ? this.#width - measured(text) : measured(text);
  }

  #straight(what: string, at: string, extent: string): void {
    const [, fold = '', cut = '', perforate = ''] = WORK.exec(what) ?? [];
    if (what !== '') this.#work = workOf(fold, cut, perforate);
    const work = this.#work;
    if (work === undefined) throw new Error(`nothing is done at ${at}`);
    const down = /down$|bottom( edge)?$/.test(extent);
    const place = at.replace(/ (across|down)$/, '');
    const about = /about/.test(`${at} ${extent}`);
    const [from, to] = this.#ends(extent, down).map((along) =>
      down ? { x: this.#across(place), y: along, about } : { x: along, y: measured(place), about },
    );
    if (from && to) this.#lines.push({ ...work, from, to });
  }

  #ends(extent: string, down: boolean): readonly number[] {
    const length = down ? this.#height : this.#width;
    if (/^from (top to bottom|left to right)$/.test(extent)) return [0, length];
    const [, start = '', end = ''] = /^from (?:the )?(.+) to (?:the )?(.+?)$/.exec(extent) ?? [];
    return [start, end].map((text) => {
      if (/^(top|left) edge$/.test(text)) return 0;
      if (/^(bottom|right) edge$/.test(text)) return length;
      const along = text.replace(/ (down|across)$/, '');
      return down ? measured(along) : this.#across(along);
    });
  }

  #point(text: string): MadePoint {
    const about = text.includes('about');
    const corner = /^the (top|bottom) (left|right) corner$/.exec(text);
    if (corner) return { x: corner[2] === 'left' ? 0 : this.#width, y: corner[1] === 'top' ? 0 : this.#height, about };
    const edge = /^the (left|right|top|bottom) edge, (.+) (down|across)$/.exec(text);
    const [, side, at = ''] = edge ?? [];
    if (side === 'left' || side === 'right') return { x: side === 'left' ? 0 : this.#width, y: measured(at), about };
    if (side === 'top' || side === 'bottom')
      return { x: this.#across(at), y: side === 'top' ? 0 : this.#height, about };
    const [, x, y] = /^(.+) across and (.+) down$/.exec(text) ?? [];
    if (x === undefined || y === undefined) throw new Error(`where is ${text}?`);
    return { x: this.#across(x), y: measured(y), about };
  }

  #begin(does: MadeRegion['does'], form: string): void {
    const circle = /^a circle with a diameter of (.+)$/.exec(form)?.[1];
    const [, width = circle ?? '', height = circle ?? ''] =
      /^(?:an? (?:rectangle|ellipse|shape) )?(.+) wide and (.+) high(?:, with round corners)?$/.exec(form) ?? [];
    this.#region = { does, size: [measured(width), measured(height)] };
    this.#corners = [];
  }

  #finish(left: number, top: number): void {
    if (this.#region === undefined) throw new Error('nothing is to be cut there');
    const { does, size } = this.#region;
    this.#regions.push({ does, box: [left, top, ...size] });
    this.#region = undefined;
  }

  #centre({ x, y }: MadePoint): void {
    const [width = 0, height = 0] = this.#region?.size ?? [];
    this.#finish(x - width / 2, y - height / 2);
  }

  #edges(side: string | undefined, x: string, y: string): void {
    const [width = 0] = this.#region?.size ?? [];
    this.#finish(side === 'left' ? measured(x) : this.#width - measured(x) - width, measured(y));
  }

  #corner([vertical, side, w = '', h = '']: readonly string[]): void {
    const [width, height] = [measured(w), measured(h)];
    this.#region = { does: 'cut away', size: [width, height] };
    this.#finish(side === 'left' ? 0 : this.#width - width, vertical === 'top' ? 0 : this.#height - height);
  }

  #close(): void {
    if (this.#region === undefined) this.#path = this.#corners;
    else this.#finish(Math.min(...this.#corners.map(({ x }) => x)), Math.min(...this.#corners.map(({ y }) => y)));
  }
}

function workOf(fold: string, cut: string, perforate: string): Pick<MadeLine, 'does' | 'fold'> {
  if (fold in FOLDS) return { does: 'crease', fold: FOLDS[fold as keyof typeof FOLDS] };
  return { does: cut !== '' ? 'cut' : perforate !== '' ? 'perforation' : 'mark', fold: undefined };
}

/** `5 1/2 in`, `139.5 mm` or a number that borrows its unit from the other end; in mm. */
function measured(text: string): number {
  const [, whole, over, under, over0 = over, under0 = under, unit] =
    /^(?:about )?(?:(\d+(?:\.\d+)?)(?: (\d+)\/(\d+))?|(\d+)\/(\d+)) (in|mm)$/.exec(text) ?? [];
  if (unit === undefined) throw new Error(`how long is ${text}?`);
  return (Number(whole ?? 0) + Number(over0 ?? 0) / Number(under0 ?? 1)) * (unit === 'in' ? 25.4 : 1);
}
