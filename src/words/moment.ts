/** A moment in words, in the reader's time zone. */
export function momentText(utc: string, language: string): string {
  return new Intl.DateTimeFormat(language === 'en' ? 'en-GB' : language, {
    dateStyle: 'full',
    timeStyle: 'short',
  }).format(new Date(utc));
}
