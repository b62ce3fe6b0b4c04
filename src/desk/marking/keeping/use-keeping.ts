import { useEffect, useState } from 'preact/hooks';
import type { MarkingFile } from '../../../exchange/marking-file/marking-file.ts';
import type { MarkingDesk } from '../use-marking-desk.ts';
import type { Keeping } from './keeper.ts';
import { readApart } from './read-apart.ts';
import { type KeeperInHand, useKeeper } from './use-keeper.ts';
import { isListAlone, workOf } from './work-of.ts';

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
  /** The same with work of another day: its class list comes to the desk, where none lies. */
  readonly putAwayWork: () => Promise<void>;
  /** The text of what lies there; null where nothing does. */
  readonly text: () => Promise<string | null>;
}

/** Keeps all the work on the desk in this browser as it changes, and beside what other tabs keep there. */
export function useKeeping(desk: MarkingDesk, exercises: readonly string[]): DeskKeeping {
  const [failed, setFailed] = useState(false);
  const inHand = useKeeper(desk);
  const { keeping, keeper, lies, others } = inHand;
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
  useListAlone(keeping, () => open(desk.open));
  return {
    keeping,
    failed,
    goOn: () => open(desk.open),
    takeOther: () => open((file) => layOther(desk, file)),
    keepMine: async () => {
      const work = workOf(desk.now(), new Date().toISOString());
      if (work) await keeper.current?.keepOver(work);
      others();
    },
    ...puttingAway(desk, inHand, exercises),
    text: async () => (await keeper.current?.read())?.text ?? null,
  };
}

/** A marking file in place of everything that lies on the desk, its class list too. */
function layOther(desk: MarkingDesk, file: MarkingFile): void {
  desk.clear();
  desk.write((now) => ({ ...now, list: '' }));
  desk.open(file);
}

/** How what is kept is taken away. */
function puttingAway(
  desk: MarkingDesk,
  { keeper, lies, others, write }: KeeperInHand,
  exercises: readonly string[],
): Pick<DeskKeeping, 'putAway' | 'putAwayWork'> {
  const putAway = async (): Promise<void> => {
    await keeper.current?.remove();
    lies('');
    others();
    write();
  };
  const putAwayWork = async (): Promise<void> => {
    const found = await keeper.current?.read();
    const read = found ? await readApart(found.text, exercises) : null;
    await putAway();
    if (read?.ok) desk.write((now) => ({ ...now, list: now.list || read.file.list }));
  };
  return { putAway, putAwayWork };
}

/** Where the class list is all that was kept, nobody has to be asked whether to go on with it. */
function useListAlone(keeping: Keeping, goOn: () => Promise<void>): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: once for everything that is offered.
  useEffect(() => {
    const take = async (): Promise<void> => await goOn();
    if (keeping.state === 'offered' && isListAlone(keeping.summary)) take().catch(() => undefined);
  }, [keeping]);
}
