/**
 * A calendar date for people: `2026-09-19` becomes `19 September 2026` in English.
 *
 * Noon in UTC, so that no time zone of the machine that builds the page can turn it into the day before.
 */
export function sayDate(iso: string, language: string): string {
  return new Intl.DateTimeFormat(language === 'en' ? 'en-GB' : language, {
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  }).format(new Date(`${iso}T12:00:00Z`));
}
