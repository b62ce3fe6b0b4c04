import { parentPort, workerData } from 'node:worker_threads';
import { takeExercises } from './exercises.ts';
import type { Orders } from './hand.ts';
import { tell } from './tell.ts';
import type { Work } from './work.ts';

const { manner, exercises }: Orders = workerData;
takeExercises(exercises);

// One hand of the crew: batches of work come in, what is said of them goes out.
parentPort?.on('message', (batch: readonly Work[]) => {
  parentPort?.postMessage(batch.map((piece) => tell(piece, manner)));
});
