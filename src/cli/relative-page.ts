/** Attributes that hold one address of the site. */
const ADDRESS = /( (?:href|src|poster|action|component-url|renderer-url|before-hydration-url)=")\/(?!\/)([^"]*)"/g;

/** Scripts and style sheets written into a page stay as they are: the policy holds their hashes. */
const VERBATIM = /(<script\b[^>]*>)([\s\S]*?)(<\/script>)|(<style\b[^>]*>)([\s\S]*?)(<\/style>)/g;

/**
 * The page with every address that starts at the root of the site made to start at the page, for a page that lies
 * `depth` folders below the root. So the built site works under any path of any host.
 */
export function relativePage(html: string, depth: number): string {
  const toRoot = depth === 0 ? './' : '../'.repeat(depth);
  const rewrite = (text: string): string => text.replace(ADDRESS, (_all, before, rest) => `${before}${toRoot}${rest}"`);
  let out = '';
  let at = 0;
  for (const verbatim of html.matchAll(VERBATIM)) {
    const opening = verbatim[1] ?? verbatim[4] ?? '';
    const body = verbatim[2] ?? verbatim[5] ?? '';
    const bodyStart = verbatim.index + opening.length;
    out += rewrite(html.slice(at, bodyStart)) + body;
    at = bodyStart + body.length;
  }
  return out + rewrite(html.slice(at));
}
