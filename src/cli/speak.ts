import { once } from 'node:events';
import process from 'node:process';
import { CommandError, UsageError } from './command-error.ts';

/** Writes and waits until the stream can take more, so that memory does not grow with what is printed. */
export async function write(stream: NodeJS.WriteStream, text: string): Promise<void> {
  if (!stream.write(text)) await once(stream, 'drain');
}

/**
 * Runs a command: what a person can mend is printed on standard error without a trace, with status 2 where the command
 * was called wrongly and 1 otherwise. A reader that stops reading, as `head` does, ends the command quietly.
 */
export async function runCommand(command: () => Promise<number>): Promise<void> {
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
    throw error;
  });
  try {
    process.exitCode = await command();
  } catch (error) {
    if (!(error instanceof CommandError)) throw error;
    process.stderr.write(`${error.message}\n`);
    process.exitCode = error instanceof UsageError ? 2 : 1;
  }
}
