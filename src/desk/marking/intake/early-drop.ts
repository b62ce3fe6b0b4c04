import { droppedFiles, type Files } from './dropped-files.ts';

/** What was dropped on the tray before the desk was awake; null where nothing was. */
let dropped: Promise<Files> | null = null;

/**
 * Takes what is dropped on a tray that the desk does not listen to yet: left to itself, the browser would leave the page and
 * show the file. What is there is given to the desk as it wakes.
 */
export function listenEarly(): void {
  document.addEventListener('dragover', lie);
  document.addEventListener('drop', drop);
}

/** What was dropped meanwhile, once; from now on the desk listens itself. */
export function takeEarly(): Promise<Files> | null {
  document.removeEventListener('dragover', lie);
  document.removeEventListener('drop', drop);
  const taken = dropped;
  dropped = null;
  return taken;
}

function lie(event: DragEvent): void {
  if (isOnTray(event)) event.preventDefault();
}

function drop(event: DragEvent): void {
  if (!isOnTray(event) || !event.dataTransfer) return;
  event.preventDefault();
  const before = dropped;
  const now = droppedFiles(event.dataTransfer.items);
  dropped = before === null ? now : Promise.all([before, now]).then((both) => both.flat());
}

function isOnTray({ target }: DragEvent): boolean {
  return target instanceof Element && target.closest('.intray') !== null;
}
