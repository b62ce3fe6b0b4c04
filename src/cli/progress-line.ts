import process from 'node:process';

/** How often the line is written afresh, ms. */
const EVERY = 100;

/** One line at a terminal that is written over as work goes on. It is there only where a person sees it and nothing else is printed to them. */
export function progressLine() {
  const isSeen = process.stderr.isTTY && !process.stdout.isTTY;
  let shown = '';
  let last = 0;
  const put = (text: string): void => {
    // Back to the start, and nothing left of what stood there.
    process.stderr.write(`\r\u001B[K${text}`);
    shown = text;
  };
  return {
    show: (text: string): void => {
      const now = Date.now();
      if (!isSeen || (text !== '' && now - last < EVERY)) return;
      last = now;
      if (text !== shown) put(text);
    },
    /** Takes the line away while something else is written. */
    around: async (writing: () => Promise<void>): Promise<void> => {
      if (shown !== '') put('');
      await writing();
    },
  };
}
