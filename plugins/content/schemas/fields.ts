import { z } from 'zod';
import { nearestName } from '../../engine/index.ts';

/** What a field says when it refuses a value, in the house form. `You wrote` is added from the file. */
export interface Refusal {
  readonly code: string;
  readonly takes: string;
  readonly remedy: string;
}

/** Refuses a value from within a transform. */
export function refuse(context: z.RefinementCtx, refusal: Refusal): never {
  context.addIssue({ code: 'custom', message: refusal.takes, params: refusal });
  return z.NEVER;
}

/** A text. `takes` says what is understood, for messages: `a title`. */
export function text(takes: string) {
  return z
    .string()
    .transform((written, context) => {
      const value = written.trim();
      if (value !== '') return value;
      return refuse(context, { code: 'value-missing', takes, remedy: `Write ${takes}.` });
    })
    .meta({ takes });
}

/** A list; one item must still be written as a list. */
export function list<T extends z.ZodType>(item: T, takes: string) {
  return z.array(item).meta({ takes });
}

/** `yes` or `no`. */
export function yesNo() {
  const takes = 'yes or no';
  return z
    .string()
    .transform((written, context) => {
      const word = written.trim().toLowerCase();
      if (word === 'yes' || word === 'true') return true;
      if (word === 'no' || word === 'false') return false;
      return refuse(context, { code: 'yes-or-no', takes, remedy: 'Write `yes` or `no`.' });
    })
    .meta({ takes });
}

/** A day of the calendar, `2026-10-03`; the value stays that text. */
export function day() {
  const takes = 'a date as year-month-day, such as 2026-10-03';
  return z
    .string()
    .transform((written, context) => {
      const value = written.trim();
      const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(value);
      if (parts === null) return refuse(context, { code: 'date-form', takes, remedy: dateRemedy(value) });
      const [year, month, date] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
      const last = daysIn(year, month);
      if (last === undefined) {
        return refuse(context, {
          code: 'date-month',
          takes,
          remedy: `Month ${parts[2]} does not exist; months run from 01 to 12.`,
        });
      }
      if (date >= 1 && date <= last) return value;
      return refuse(context, {
        code: 'date-day',
        takes,
        remedy: `Month ${parts[2]} of ${year} has the days 01 to ${last}. Correct the day.`,
      });
    })
    .meta({ takes });
}

/** Days in a month of the Gregorian calendar; undefined when there is no such month. */
function daysIn(year: number, month: number): number | undefined {
  if (month === 2) return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28;
  return [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1];
}

function dateRemedy(written: string): string {
  const loose = /^(\d{4})[-/. ](\d{1,2})[-/. ](\d{1,2})$/.exec(written);
  if (loose === null)
    return 'Write the year with four figures, then month and day with two each, with hyphens between.';
  return `Write ${loose[1]}-${loose[2]?.padStart(2, '0')}-${loose[3]?.padStart(2, '0')}.`;
}

/** A web address. Only `https:` is taken, so that no link can run a script or travel in the clear. */
export function webAddress() {
  const takes = 'a web address that begins with https://';
  return z
    .string()
    .transform((written, context) => {
      const value = written.trim();
      if (/^http:\/\//i.test(value)) {
        return refuse(context, { code: 'address-scheme', takes, remedy: `Write https: https://${value.slice(7)}` });
      }
      if (!/^https:\/\//i.test(value)) {
        const scheme = /^[a-z][a-z0-9+.-]*:/i.test(value);
        const remedy =
          scheme || value.includes(' ') ? 'Copy the address of the page from the browser.' : `Write https://${value}`;
        return refuse(context, { code: 'address-scheme', takes, remedy });
      }
      if (/[\s"'<>\\^`{|}]/.test(value) || !URL.canParse(value)) {
        return refuse(context, {
          code: 'address-form',
          takes,
          remedy: 'Copy the address of the page from the browser; it has no spaces, quotes or pointed brackets in it.',
        });
      }
      return value;
    })
    .meta({ takes });
}

/** A language tag after BCP 47: `en`, `en-GB`. */
export function languageTag() {
  const takes = 'a language tag such as `en` or `en-GB`';
  return z
    .string()
    .transform((written, context) => {
      try {
        return Intl.getCanonicalLocales(written.trim())[0] ?? written;
      } catch {
        return refuse(context, { code: 'language-tag', takes, remedy: 'Write the two letters of the language: `en`.' });
      }
    })
    .meta({ takes });
}

/** The id of another file of the content: its file name without the ending. Whether it exists is asked of the library. */
export function idOf(what: string) {
  return text(`the id of a ${what}: its file name without the ending`);
}

/** One of a few words. */
export function oneOf<const W extends readonly [string, ...string[]]>(words: W) {
  const takes = `one of ${sayWords(words)}`;
  return z
    .string()
    .transform((written, context): W[number] => {
      const found = words.find((word) => word === written.trim().toLowerCase());
      if (found !== undefined) return found;
      const near = nearestName(written, words);
      return refuse(context, {
        code: 'word-unknown',
        takes,
        remedy: near === undefined ? `Write ${sayWords(words)}.` : `Did you mean \`${near}\`?`,
      });
    })
    .meta({ takes });
}

function sayWords(words: readonly string[]): string {
  const shown = words.map((word) => `\`${word}\``);
  const last = shown.pop();
  return shown.length === 0 ? `${last}` : `${shown.join(', ')} or ${last}`;
}

/** The unit of bare numbers in the same file. */
export function unit() {
  return oneOf(['in', 'mm', 'cm']);
}

/** A value for the inch edition and one for the metric edition. */
export function perEdition<T extends z.ZodType>(value: T) {
  return z
    .strictObject({
      inch: value.optional().describe('For the inch edition.'),
      metric: value.optional().describe('For the metric edition.'),
    })
    .meta({ takes: '`inch:` and `metric:`' });
}

/** One value for both editions, or one for each. The value is a text that the engine reads. */
export function oneOrPerEdition(takes: string) {
  return z
    .preprocess(
      (written) => (typeof written === 'string' ? { inch: written, metric: written } : written),
      perEdition(text(takes)),
    )
    .meta({ takes: `${takes}, or \`inch:\` and \`metric:\` with one each` });
}

/** A part of the fold language, which the engine reads; only its presence counts here. */
export function foldLanguage(takes: string) {
  return z.unknown().meta({ takes });
}
