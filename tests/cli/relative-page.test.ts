import { expect, test } from 'vitest';
import { relativePage } from '../../src/cli/relative-page.ts';

test('addresses from the root start at the page instead', () => {
  expect(relativePage('<a href="/">home</a><img src="/a/b.png">', 0)).toBe(
    '<a href="./">home</a><img src="./a/b.png">',
  );
  expect(relativePage('<a href="/lessons/roll-line/#sources">', 2)).toBe('<a href="../../lessons/roll-line/#sources">');
  expect(relativePage('<astro-island component-url="/_astro/t.js" client="visible">', 1)).toBe(
    '<astro-island component-url="../_astro/t.js" client="visible">',
  );
});

test('addresses of elsewhere, of the page and relative ones stay', () => {
  const page =
    '<a href="https://example.org/">a</a><a href="//example.org/">b</a><a href="#c">c</a><a href="../d/">d</a>';
  expect(relativePage(page, 3)).toBe(page);
});

test('scripts and styles in the page stay as the policy has hashed them, their own addresses do not', () => {
  expect(relativePage('<script src="/s.js"></script><script>x=` href="/y"`</script><a href="/z">', 1)).toBe(
    '<script src="../s.js"></script><script>x=` href="/y"`</script><a href="../z">',
  );
  const style = '<style>a{background:url( src="/x")}</style>';
  expect(relativePage(style, 1)).toBe(style);
});
