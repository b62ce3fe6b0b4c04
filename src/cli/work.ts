import { createReadStream, type Dirent } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import path from 'node:path';
import { piecesIn } from '../exchange/pieces.ts';
import { type Message, message } from '../words/message.ts';
import { spelled } from '../words/unseen.ts';

/**
 * One piece of work from the command line's paths: where it was found, and its text or why there is none. `file` is what its
 * row says: the same as `where`, but of a stream without the line, so that a stream may be split and put together again.
 */
export type Work =
  | { readonly where: string; readonly file: string; readonly text: string }
  | { readonly where: string; readonly refused: Message }
  | { readonly where: string; readonly note: Message };

/** The files of a folder that may hold work. */
const WORK_FILE = /\.(?:json|jsonl|ndjson)$/i;

/** Every piece of work in files, folders and, for `-`, standard input, one after another. A path that cannot be read is a piece refused. */
export async function* workIn(paths: readonly string[], input: AsyncIterable<string>): AsyncGenerator<Work> {
  for (const one of paths) {
    if (one === '-') yield* piecesOf({ name: 'standard input', isStream: true }, input);
    else yield* workAt(one);
  }
}

async function* workAt(file: string): AsyncGenerator<Work> {
  try {
    const isFolder = (await stat(file)).isDirectory();
    yield* isFolder
      ? workInFolder(file)
      : piecesOf({ name: file, isStream: false }, createReadStream(file, 'utf8') as AsyncIterable<string>);
  } catch (error) {
    yield { where: file, refused: whyUnreadable(error) };
  }
}

/** The files that may hold work at a path: those of a folder, or the file itself. None for standard input, a pipe, or what is not there. */
export async function* filesOf(at: string): AsyncGenerator<string> {
  const found = at === '-' ? undefined : await stat(at).catch(() => undefined);
  if (found?.isFile()) yield at;
  if (!found?.isDirectory()) return;
  try {
    for await (const { file, isWork } of filesIn(at)) if (isWork) yield file;
  } catch (error) {
    // A folder that may not be read is told in its turn; anything else is no fault of the system, and is thrown.
    whyUnreadable(error);
  }
}

async function* workInFolder(folder: string): AsyncGenerator<Work> {
  let found = false;
  const passedOver: string[] = [];
  for await (const { file, isWork } of filesIn(folder)) {
    if (isWork) yield* workAt(file);
    else passedOver.push(path.relative(folder, file));
    found ||= isWork;
  }
  if (!found) yield { where: folder, note: message('command.folder-empty') };
  if (passedOver.length > 0) yield { where: folder, note: passedOverNote(passedOver) };
}

/** How many names of files passed over are told; a folder of pictures needs no more. */
const TOLD = 10;

function passedOverNote(files: readonly string[]): Message {
  const told = { listed: files.slice(0, TOLD).map(spelled) };
  return message('command.passed-over', { count: files.length, files: told, more: Math.max(0, files.length - TOLD) });
}

interface Found {
  readonly file: string;
  /** Whether it may hold work: a file, or a link to one, of a name that work has. */
  readonly isWork: boolean;
}

/**
 * Sorted, so that a folder is always marked in the same order. Hidden files and folders are left out. A link to a folder
 * is not followed: it may lead back to where it lies.
 */
async function* filesIn(folder: string): AsyncGenerator<Found> {
  const entries = await readdir(folder, { withFileTypes: true });
  entries.sort((a, b) => (a.name < b.name ? -1 : 1));
  for (const entry of entries) {
    const file = path.join(folder, entry.name);
    if (entry.name.startsWith('.')) continue;
    if (entry.isDirectory()) yield* filesIn(file);
    else yield { file, isWork: WORK_FILE.test(entry.name) && (await mayBeRead(entry, file)) };
  }
}

/** A file is taken, and a link unless it leads to something that is no file; one that leads nowhere is told when it is opened. */
async function mayBeRead(entry: Dirent, file: string): Promise<boolean> {
  if (!entry.isSymbolicLink()) return entry.isFile();
  try {
    return (await stat(file)).isFile();
  } catch {
    return true;
  }
}

interface Source {
  readonly name: string;
  readonly isStream: boolean;
}

async function* piecesOf({ name, isStream }: Source, chunks: AsyncIterable<string>): AsyncGenerator<Work> {
  for await (const piece of piecesIn(chunks)) {
    const where = piece.line === null ? name : `${name}:${piece.line}`;
    if ('text' in piece) yield { where, file: isStream ? name : where, text: piece.text };
    else yield { where, refused: piece.refused };
  }
}

/** Why the system would not let a file be read, in words. */
export function whyUnreadable(error: unknown): Message {
  const code = (error as { readonly code?: unknown }).code;
  if (code === 'ENOENT') return message('command.missing');
  if (code === 'EACCES' || code === 'EPERM') return message('command.forbidden');
  if (code === 'EISDIR') return message('command.folder');
  if (typeof code !== 'string') throw error;
  return message('command.unreadable', { code });
}
