import { Parser } from 'yaml';

/** A piece of a YAML text that has to be known to tell a slip: a quoted text, a sign that makes what follows something else, or a remark. */
export interface Token {
  readonly type: 'quoted' | 'sign' | 'remark';
  readonly source: string;
  /** Where it begins, in characters from the start of the text. */
  readonly offset: number;
}

const kinds: Readonly<Record<string, Token['type']>> = {
  'double-quoted-scalar': 'quoted',
  'single-quoted-scalar': 'quoted',
  anchor: 'sign',
  alias: 'sign',
  tag: 'sign',
  comment: 'remark',
};

/** The quoted texts, anchors, aliases, tags and comments of a YAML text, in order. Read from its tokens, which are there however broken it is. */
export function tokensIn(text: string): readonly Token[] {
  return [...new Parser().parse(text)].flatMap(within).sort((a, b) => a.offset - b.offset);
}

function within(node: unknown): readonly Token[] {
  if (Array.isArray(node)) return node.flatMap(within);
  if (typeof node !== 'object' || node === null) return [];
  const { type, source, offset } = node as {
    readonly type?: string;
    readonly source?: string;
    readonly offset?: number;
  };
  const kind = kinds[type ?? ''];
  const own =
    kind !== undefined && source !== undefined && offset !== undefined ? [{ type: kind, source, offset }] : [];
  return [...own, ...Object.values(node).flatMap(within)];
}
