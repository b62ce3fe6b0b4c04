import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { siteFolder } from '../../src/cli/site.ts';

const SITE = siteFolder();
const pages = existsSync(SITE)
  ? readdirSync(SITE, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.html'))
  : [];

test('the site is built and has pages', () => {
  expect(pages).toContain('index.html');
});

test('the licences of what is served are served with it', () => {
  const text = readFileSync(path.join(SITE, 'licences.txt'), 'utf8');
  for (const name of ['preact ', '@fontsource-variable/source-serif-4 ', 'SIL OPEN FONT LICENSE Version 1.1'])
    expect(text).toContain(name);
});

describe.each(pages)('%s', (file) => {
  const html = readFileSync(path.join(SITE, file), 'utf8');

  test('carries no style attribute and no handler attribute', () => {
    expect(tags(html).filter((tag) => / (?:style|on[a-z]+)=/.test(tag))).toEqual([]);
  });

  test('states a strict policy before anything it governs', () => {
    const before = html.slice(0, html.indexOf('http-equiv="content-security-policy"'));
    expect(before).not.toMatch(/<script|<style|rel="stylesheet"/);
    const policy = policyOf(html);
    expect(policy['default-src']).toEqual(["'self'"]);
    expect(policy['connect-src']).toEqual(["'self'"]);
    expect(policy['object-src']).toEqual(["'none'"]);
    expect(policy['base-uri']).toEqual(["'none'"]);
    for (const source of Object.values(policy).flat()) expect(source).toMatch(/^'(?:self|none|sha256-[^']+)'$/);
  });

  test('holds no inline script or style without its hash in the policy', () => {
    const policy = policyOf(html);
    for (const script of inline(html, 'script')) expect(policy['script-src']).toContain(hash(script));
    for (const style of inline(html, 'style')) expect(policy['style-src']).toContain(hash(style));
  });

  test('loads nothing from elsewhere', () => {
    const loading = tags(html).filter((tag) =>
      /^<(?:script|link|img|iframe|source|video|audio|object|embed)\b/.test(tag),
    );
    expect(loading.filter((tag) => / (?:src|href|data|srcset)="(?:[a-z]+:)?\/\//.test(tag))).toEqual([]);
  });

  test.skipIf(file === '404.html')('says where things are from where it lies, and they are there', () => {
    const addresses = tags(html).flatMap((tag) =>
      Array.from(tag.matchAll(/ (?:href|src|component-url|renderer-url)="([^"]*)"/g), (match) => match[1] ?? ''),
    );
    const local = addresses.filter((address) => !/^(?:[a-z]+:|\/\/)/.test(address));
    expect(local.filter((address) => address.startsWith('/'))).toEqual([]);
    expect(local.filter((address) => !leads(file, address))).toEqual([]);
  });
});

/** Every opening tag of a page, without the bodies of scripts. */
function tags(html: string): readonly string[] {
  const bare = html.replace(/(<script\b[^>]*>)[\s\S]*?<\/script>/g, '$1');
  return bare.match(/<[a-z][a-z0-9-]*(?:\s+[^\s=>"]+(?:="[^"]*")?)*\s*\/?>/g) ?? [];
}

function policyOf(html: string): Readonly<Record<string, readonly string[]>> {
  const content = /http-equiv="content-security-policy" content="([^"]*)"/.exec(html)?.[1] ?? '';
  const rules = content.split(';').map((rule) => rule.trim().split(/\s+/));
  return Object.fromEntries(rules.map(([name = '', ...sources]) => [name, sources]));
}

/** The bodies of the scripts or styles written into a page, without data that no browser runs. */
function inline(html: string, element: 'script' | 'style'): readonly string[] {
  const found = html.matchAll(new RegExp(`<${element}\\b([^>]*)>([\\s\\S]*?)</${element}>`, 'g'));
  return Array.from(found)
    .filter(([, attributes = '']) => !/ src=| type="application\/(?:ld\+)?json"/.test(attributes))
    .map(([, , body = '']) => body);
}

function hash(text: string): string {
  return `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
}

/** Whether a relative address leads from the page to a file of the site, and its fragment to an element there. */
function leads(from: string, address: string): boolean {
  const [before = '', fragment] = address.split('#');
  const [where = ''] = before.split('?');
  const target = where === '' ? from : path.join(path.dirname(from), decodeURIComponent(where));
  const file = where.endsWith('/') || where.endsWith('.') ? path.join(target, 'index.html') : target;
  const full = path.join(SITE, file);
  if (!existsSync(full)) return false;
  return !fragment || !file.endsWith('.html') || readFileSync(full, 'utf8').includes(` id="${fragment}"`);
}
