import { type MarkingReading, readMarking } from '../../../exchange/marking-file/read-marking.ts';

/** A marking file to be read, and the names of the exercises there are. */
export interface ToRead {
  readonly text: string;
  readonly exercises: readonly string[];
}

self.addEventListener('message', ({ data: { text, exercises } }: MessageEvent<ToRead>) => {
  self.postMessage(readMarking(text, exercises) satisfies MarkingReading);
});
