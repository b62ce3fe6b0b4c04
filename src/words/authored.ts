import { IntlMessageFormat } from 'intl-messageformat';
import { inReadersUnit } from './literal-lengths.ts';
import { withArguments } from './say.ts';

/** What a text an author wrote comes to: the names it uses in braces, or where it cannot be read. */
export type Authored =
  | { readonly ok: true; readonly uses: readonly string[] }
  | { readonly ok: false; readonly fault: AuthoredFault; readonly near: string };

/** What is wrong with the text: a brace, or an angle bracket that looks like a tag. */
export type AuthoredFault = 'brace' | 'tag';

const LANGUAGE = 'en';

/** Reads an ICU message with hyphens allowed in the names of its values. `uses` has every such name once, sorted. */
export function readAuthored(text: string): Authored {
  // In whichever unit its lengths are said, it reads the same.
  const spelt = withArguments(inReadersUnit(text, 'cm'));
  try {
    const names = new IntlMessageFormat(spelt, LANGUAGE).getAst().flatMap(namesIn);
    return { ok: true, uses: [...new Set(names)].sort().map((name) => name.replaceAll('_', '-')) };
  } catch (error) {
    const { message, location } = error as ParseError;
    const start = location?.start.offset ?? 0;
    return { ok: false, fault: message.includes('TAG') ? 'tag' : 'brace', near: spelt.slice(start, start + NEAR) };
  }
}

/** How much of the text is shown at the place of a fault, in characters. */
const NEAR = 24;

/** What the parser throws: a word for the fault, and where it is. */
interface ParseError {
  readonly message: string;
  readonly location?: { readonly start: { readonly offset: number } };
}

type Element = ReturnType<IntlMessageFormat['getAst']>[number];

/** In the parser's tree, a run of plain text has type 0. */
const LITERAL = 0;

function namesIn(element: Element): readonly string[] {
  const own = 'value' in element && Number(element.type) !== LITERAL ? [element.value] : [];
  const choices = 'options' in element ? Object.values(element.options).flatMap(({ value }) => value) : [];
  const children = 'children' in element ? element.children : [];
  return [...own, ...[...choices, ...children].flatMap(namesIn)];
}
