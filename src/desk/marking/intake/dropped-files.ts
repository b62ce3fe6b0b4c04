import type { Task } from './marking-worker.ts';

/** Files with the folders they lie in. */
export type Files = Task['files'];

/** Files that were chosen, with the folders they lie in where a folder was. Hidden ones are left out. */
export function chosenFiles(list: FileList): Files {
  return [...list]
    .map((file) => ({ name: file.webkitRelativePath || file.name, file }))
    .filter(({ name }) => !isHidden(name));
}

/** Files that were dropped, and those of folders that were. */
export async function droppedFiles(items: DataTransferItemList): Promise<Files> {
  // Entries must be asked for before anything is waited for: afterwards the list is empty.
  const entries = [...items].flatMap((item) => item.webkitGetAsEntry() ?? []);
  const found: Files[number][] = [];
  for (const entry of entries) found.push(...(await filesIn(entry)));
  return found.filter(({ name }) => !isHidden(name)).toSorted((a, b) => (a.name < b.name ? -1 : 1));
}

async function filesIn(entry: FileSystemEntry): Promise<Files> {
  const name = entry.fullPath.replace(/^\//, '');
  if (entry.isFile) {
    const file = await new Promise<File>((resolve, reject) => (entry as FileSystemFileEntry).file(resolve, reject));
    return [{ name, file }];
  }
  const found: Files[number][] = [];
  const reader = (entry as FileSystemDirectoryEntry).createReader();
  for (;;) {
    // A folder is read in parts, until one is empty.
    const part = await new Promise<readonly FileSystemEntry[]>((resolve, reject) =>
      reader.readEntries(resolve, reject),
    );
    if (part.length === 0) return found;
    for (const inside of part) found.push(...(await filesIn(inside)));
  }
}

function isHidden(name: string): boolean {
  return name.split('/').some((part) => part.startsWith('.'));
}
