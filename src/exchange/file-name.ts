/** A file's name made of words, in letters every system takes, with a dot between them: `ilse-maringa.overlap.hand-in.json`. Words of which nothing is left are left out. */
export function fileNameOf(words: readonly string[], suffix: string): string {
  return [...words.map(plainWord).filter((word) => word !== ''), suffix].join('.');
}

function plainWord(text: string): string {
  return text
    .normalize('NFKD')
    .replaceAll(/\p{Mn}/gu, '')
    .replaceAll(/[^a-z0-9]+/gi, '-')
    .replaceAll(/^-+|-+$/g, '')
    .toLowerCase();
}
