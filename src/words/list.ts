/** Words joined as a list of the language: "a, b and c". The English of the catalogue is British: no comma before the "and". */
export function listText(words: readonly string[], language: string): string {
  return new Intl.ListFormat(language === 'en' ? 'en-GB' : language, { type: 'conjunction' }).format(words);
}
