import { storageIn } from '../table/store/storage.ts';

const local = storageIn(() => window.localStorage);

const keyFor = (lesson: string): string => `gorgeline.read.${lesson}`;

/** Whether the reader has said that this lesson is read. */
export function isRead(lesson: string): boolean {
  return local.read(keyFor(lesson)) === 'yes';
}

/** Keeps what the reader says of a lesson. */
export function sayRead(lesson: string, read: boolean): void {
  if (read) local.write(keyFor(lesson), 'yes');
  else local.remove(keyFor(lesson));
}
