import { parentPort, workerData } from 'node:worker_threads';
import { type Manner, tell } from './tell.ts';
import type { Work } from './work.ts';

// One hand of the crew: batches of work come in, what is said of them goes out.
parentPort?.on('message', (batch: readonly Work[]) => {
  parentPort?.postMessage(batch.map((piece) => tell(piece, workerData as Manner)));
});
