import { IntlMessageFormat } from 'intl-messageformat';
import { en } from './en/index.ts';
import type { Entry } from './entry.ts';
import { angleText, lengthText, statedText } from './length.ts';
import { listText } from './list.ts';
import { inReadersUnit } from './literal-lengths.ts';
import type { Key, Message, Value } from './message.ts';
import { apartText, offText } from './off.ts';
import type { Unit } from './unit.ts';

/** Who is spoken to: the language and the unit of length. */
export interface Reader {
  readonly language: string;
  readonly unit: Unit;
}

/**
 * The catalogue in another language: a new file beside `en`, with the same keys. What it has not is said in English. It may
 * have names that English makes of the name itself: `name.roll-line`.
 */
export type Translation = Readonly<Partial<Record<Key | `name.${string}`, string>>>;

const translations = new Map<string, Translation>();

/** Adds a language, by its BCP 47 tag. Its messages may use the values that the English ones need, and no others. */
export function addLanguage(language: string, translation: Translation): void {
  translations.set(language, translation);
}

const formats = new Map<string, IntlMessageFormat>();

/** The ICU message behind a key, parsed once; lengths that stand in it are in the reader's unit. */
export function formatOf(key: Key, { language, unit }: Reader): IntlMessageFormat {
  const translated = translations.get(language)?.[key];
  return formatFor(inReadersUnit(translated ?? textOf(key), unit), translated ? language : 'en');
}

/** The English text behind a key, as it stands in the catalogue. */
export function textOf(key: Key): string {
  return (en as Record<string, Entry>)[key]?.text ?? key;
}

function formatFor(text: string, language: string): IntlMessageFormat {
  const id = `${language}/${text}`;
  const known = formats.get(id);
  if (known) return known;
  const made = new IntlMessageFormat(text, language);
  formats.set(id, made);
  return made;
}

/** The message in words. */
export function say(message: Message, reader: Reader): string {
  const values = Object.fromEntries(
    Object.entries(message.values).map(([name, value]) => [argument(name), valueText(value, reader)]),
  );
  const format =
    'key' in message
      ? formatOf(message.key, reader)
      : formatFor(withArguments(inReadersUnit(message.text, reader.unit)), reader.language);
  return format.format(values) as string;
}

/** The message as a sentence of its own, which begins with a capital though it begin with a name. */
export function saySentence(message: Message, reader: Reader): string {
  return capitalised(say(message, reader), reader.language);
}

/** ICU argument names have no hyphens, the names of measures do: `{break-rise}` is spelt `{break_rise}` inside. */
function argument(name: string): string {
  return name.replaceAll('-', '_');
}

/** An author's text with the names in its braces spelt as ICU wants them. */
export function withArguments(text: string): string {
  return text.replace(/\{([a-z][a-z0-9-]*)([,}])/g, (_, name: string, after: string) => `{${argument(name)}${after}`);
}

/** How a value reads inside a sentence. Plain numbers stay numbers, so that messages can choose a plural by them. */
export function valueText(value: Value, reader: Reader): string | number {
  if (typeof value !== 'object') return value;
  if ('mm' in value) return lengthText(value.mm, reader.unit);
  if ('stated' in value) return statedText(value.stated, reader.unit);
  if ('radians' in value) return angleText(value.radians);
  if ('off' in value) return spoken(offText(value.off, reader.unit), reader);
  if ('apart' in value) return spoken(apartText(value.apart, value.unit, reader.unit), reader);
  if ('named' in value) return nameText(value.named, reader);
  if ('namedAll' in value) {
    const names = value.namedAll.map((name) => nameText(name, reader));
    return listText(names, reader.language);
  }
  if ('listed' in value) {
    const listed = value.listed.map((one) => spoken(one, reader));
    return listText(listed, reader.language);
  }
  if ('sentence' in value) return saySentence(value.sentence, reader);
  return say(value.said, reader);
}

/** A text with a capital first, by the rules of its language. */
export function capitalised(text: string, language: string): string {
  return `${text.charAt(0).toLocaleUpperCase(language)}${text.slice(1)}`;
}

function spoken(said: string | Message, reader: Reader): string {
  return typeof said === 'string' ? said : say(said, reader);
}

/** The trade's words for a name: from the catalogue where it has them, otherwise the name with spaces for hyphens. */
export function nameText(name: string, reader: Reader): string {
  // A step may have come without a name: an empty one is shown as such.
  if (name === '') return '“”';
  const key = `name.${name}` as Key;
  const known = key in en || translations.get(reader.language)?.[key] !== undefined;
  return known ? (formatOf(key, reader).format() as string) : name.replaceAll('-', ' ');
}
