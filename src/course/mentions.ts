/** The ids that a lesson's text names with a component, each once, in the order of their first mention: `<Term of="overlap">`. */
export function mentions(body: string, component: string): readonly string[] {
  const tag = new RegExp(`<${component}\\s[^>]*?\\bof="([^"]+)"`, 'g');
  return [...new Set(Array.from(body.matchAll(tag), (match) => match[1] ?? ''))];
}
