import { type ParseArgsOptionsConfig, parseArgs } from 'node:util';
import { type Message, message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { UsageError } from './command-error.ts';

const reader = { language: 'en', unit: 'in' } as const;

/** Reads a command's arguments; throws a UsageError that ends with how the command is called. */
export function readArguments<const O extends ParseArgsOptionsConfig>(
  args: readonly string[],
  options: O,
  usage: Message,
) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (error) {
    throw usageError(whatIsWrong(error, args), usage);
  }
}

/** The error for a command that was called wrongly. */
export function usageError(said: Message, usage: Message): UsageError {
  return new UsageError(say(message('command.usage', { said: { said }, usage: { said: usage } }), reader));
}

/** `name=value` as its two sides; throws a UsageError where there is no equals sign or nothing before it. */
export function pairOf(option: string, text: string, usage: Message): readonly [string, string] {
  const at = text.indexOf('=');
  if (at <= 0) throw usageError(message('command.pair', { option, found: text }), usage);
  return [text.slice(0, at).trim(), text.slice(at + 1).trim()];
}

/** Node's own words for these differ between versions; its codes do not. */
function whatIsWrong(error: unknown, args: readonly string[]): Message {
  const { code, message: text } = error as { readonly code?: string; readonly message: string };
  const option = /'(-[^' ]*)/.exec(text)?.[1]?.replace(/,$/, '') ?? args.find((arg) => arg.startsWith('-')) ?? '';
  if (code === 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE') {
    return /does not take/.test(text)
      ? message('command.option-bare', { option })
      : message('command.option-value', { option });
  }
  return message('command.unknown-option', { option });
}
