import { once } from 'node:events';
import process from 'node:process';
import { message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { CommandError, UsageError } from './command-error.ts';
import { progressLine } from './progress-line.ts';

const inEnglish = { language: 'en', unit: 'cm' } as const;

/** What a command speaks to and hears from: the process's own streams, or a test's. */
export interface Talk {
  readonly say: (text: string) => Promise<void>;
  readonly complain: (text: string) => Promise<void>;
  readonly input: AsyncIterable<string>;
  /** Whether a person reads what is said, and not a program. */
  readonly terminal: boolean;
  /** Shows how far it is, to a person who waits; nothing is shown for an empty text. */
  readonly progress?: (text: string) => void;
  /** Whether the person has told it to stop: what is begun is ended, in whole lines. */
  readonly stopped?: () => boolean;
}

/** A command: its arguments, and the exit status it comes to. */
export type Command = (args: readonly string[], talk: Talk) => Promise<number>;

/** Runs a command; what a person can mend is told without a trace, with status 2 where the command was called wrongly and 1 otherwise. */
export async function attempt(command: Command, args: readonly string[], talk: Talk): Promise<number> {
  try {
    return await command(args, talk);
  } catch (error) {
    if (!(error instanceof CommandError)) throw error;
    await talk.complain(`${error.message}\n`);
    return error instanceof UsageError ? 2 : 1;
  }
}

/**
 * Runs a command for the person at the command line. A reader that stops reading, as `head` does, ends it quietly; what cannot
 * be written for another reason, as on a full disk, is told and ends it with status 1.
 */
export async function runCommand(command: Command): Promise<void> {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
    process.stderr.write(`${say(message('command.unwritten', { why: error.message }), inEnglish)}\n`);
    process.exit(1);
  });
  let stopped = false;
  process.once('SIGINT', () => {
    stopped = true;
    // What waits for more to read would wait on.
    process.stdin.destroy();
  });
  const progress = progressLine();
  process.exitCode = await attempt(command, process.argv.slice(2), {
    say: (text) => progress.around(() => write(process.stdout, text)),
    complain: (text) => progress.around(() => write(process.stderr, text)),
    input: process.stdin.setEncoding('utf8') as AsyncIterable<string>,
    terminal: process.stdout.isTTY,
    progress: progress.show,
    stopped: () => stopped,
  });
}

/** Writes and waits until the stream can take more, so that memory does not grow with what is printed. */
async function write(stream: NodeJS.WriteStream, text: string): Promise<void> {
  if (!stream.write(text)) await once(stream, 'drain');
}
