const SVG = 'http://www.w3.org/2000/svg';

type Attributes = Readonly<Record<string, string>>;

/** A new SVG element. */
export function made<Tag extends keyof SVGElementTagNameMap>(
  tag: Tag,
  attributes: Attributes,
): SVGElementTagNameMap[Tag] {
  const element = document.createElementNS(SVG, tag);
  set(element, attributes);
  return element;
}

export function set(element: SVGElement, attributes: Attributes): void {
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
}
