import { writeSync } from 'node:fs';
import { isMainThread } from 'node:worker_threads';

// Loaded before a command: tells on the fourth stream what it needed, when it is done.
if (isMainThread)
  process.on('exit', () => {
    globalThis.gc?.();
    writeSync(3, JSON.stringify({ peak: process.resourceUsage().maxRSS, heap: process.memoryUsage().heapUsed }));
  });
