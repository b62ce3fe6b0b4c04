import { useState } from 'preact/hooks';
import type { MarkingFile } from '../../../exchange/marking-file/marking-file.ts';
import type { MarkingDesk } from '../use-marking-desk.ts';
import type { Keeping } from './keeper.ts';
import { readApart } from './read-apart.ts';
import { useKeeper } from './use-keeper.ts';
import { workOf } from './work-of.ts';

export interface DeskKeeping {
  readonly keeping: Keeping;
  /** Whether what lies there could not be fetched to be read. */
  readonly failed: boolean;
  /** Opens what lies there on top of what lies on the desk. */
  readonly goOn: () => Promise<void>;
  /** Opens what lies there in place of what lies on the desk. */
  readonly takeOther: () => Promise<void>;
  /** Keeps what lies on the desk over what lies there. */
  readonly keepMine: () => Promise<void>;
  /** Takes away what lies there. */
  readonly putAway: () => Promise<void>;
  /** The text of what lies there; null where nothing does. */
  readonly text: () => Promise<string | null>;
}

/** Keeps all the work on the desk in this browser as it changes, and beside what other tabs keep there. */
export function useKeeping(desk: MarkingDesk, exercises: readonly string[]): DeskKeeping {
  const [failed, setFailed] = useState(false);
  const { keeping, keeper, lies, others, write } = useKeeper(desk);
  const open = async (how: (file: MarkingFile) => void): Promise<void> => {
    const found = await keeper.current?.read();
    if (!found) return;
    const read = await readApart(found.text, exercises);
    setFailed(read === null);
    if (read?.ok) {
      keeper.current?.took(found);
      lies(found.text);
      how(read.file);
    } else if (read) keeper.current?.foundDamaged(found);
  };
  return {
    keeping,
    failed,
    goOn: () => open(desk.open),
    takeOther: () =>
      open((file) => {
        desk.clear();
        desk.open(file);
      }),
    keepMine: async () => {
      const work = workOf(desk.now(), new Date().toISOString());
      if (work) await keeper.current?.keepOver(work);
      others();
    },
    putAway: async () => {
      await keeper.current?.remove();
      lies('');
      others();
      write();
    },
    text: async () => (await keeper.current?.read())?.text ?? null,
  };
}
