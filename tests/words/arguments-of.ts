import { IntlMessageFormat } from 'intl-messageformat';

/** The names of the values an ICU message uses, sorted, each once. */
export function argumentsOf(text: string): readonly string[] {
  return [...new Set(new IntlMessageFormat(text, 'en').getAst().flatMap(namesIn))].sort();
}

type Element = ReturnType<IntlMessageFormat['getAst']>[number];

function namesIn(element: Element): readonly string[] {
  const own = 'value' in element && !isLiteral(element) ? [element.value] : [];
  const choices = 'options' in element ? Object.values(element.options).flatMap(({ value }) => value) : [];
  const children = 'children' in element ? element.children : [];
  return [...own, ...[...choices, ...children].flatMap(namesIn)];
}

/** In the parser's tree, a run of plain text has type 0. */
function isLiteral(element: Element): boolean {
  return Number(element.type) === 0;
}
