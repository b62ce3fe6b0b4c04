import type { MarkingReading } from '../../../exchange/marking-file/read-marking.ts';
import type { ToRead } from './reading-worker.ts';

/** Reads a marking file in a worker of its own, so that the page answers meanwhile; null where that could not be begun. */
export async function readApart(text: string, exercises: readonly string[]): Promise<MarkingReading | null> {
  const worker = new Worker(new URL('./reading-worker.ts', import.meta.url), { type: 'module' });
  const read = await new Promise<MarkingReading | null>((resolve) => {
    worker.addEventListener('message', ({ data }: MessageEvent<MarkingReading>) => resolve(data));
    worker.addEventListener('error', () => resolve(null));
    worker.postMessage({ text, exercises } satisfies ToRead);
  });
  worker.terminate();
  return read;
}
