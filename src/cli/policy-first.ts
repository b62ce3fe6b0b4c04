const POLICY = /<meta http-equiv="content-security-policy" content="[^"]*">/i;

/**
 * The page with its policy right behind the character set: a policy in a page governs only what comes after it. Throws
 * where a page has no policy or no character set.
 */
export function policyFirst(html: string): string {
  const policy = POLICY.exec(html)?.[0];
  const charset = /<meta charset="utf-8">/i.exec(html);
  if (!policy || !charset)
    throw new Error('A page must have a policy and say its character set: is it made by a layout?');
  const behind = charset.index + charset[0].length;
  const bare = html.replace(policy, '');
  return bare.slice(0, behind) + policy + bare.slice(behind);
}
