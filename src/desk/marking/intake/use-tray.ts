import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { chosenFiles, droppedFiles, type Files } from './dropped-files.ts';
import { takeEarly } from './early-drop.ts';

/** The tray as files are laid on it. */
export interface Tray {
  /** Whether it can be used: the page is built before it can. */
  readonly awake: boolean;
  readonly files: RefObject<HTMLInputElement>;
  readonly folder: RefObject<HTMLInputElement>;
  /** Whether something is held over it. */
  readonly over: boolean;
  /** Whether the browser did not give what was dropped. */
  readonly lost: boolean;
  readonly choose: (event: Event & { readonly currentTarget: HTMLInputElement }) => void;
  readonly listen: {
    readonly onDragOver: (event: DragEvent) => void;
    readonly onDragLeave: () => void;
    readonly onDrop: (event: DragEvent) => Promise<void>;
  };
}

/** What is chosen and dropped is taken in; so is, as the desk wakes, what was chosen or dropped before. */
export function useTray(takeIn: (files: Files) => void): Tray {
  const [awake, setAwake] = useState(false);
  const [over, setOver] = useState(false);
  const [lost, setLost] = useState(false);
  const files = useRef<HTMLInputElement>(null);
  const folder = useRef<HTMLInputElement>(null);
  const takeDropped = async (dropped: Promise<Files>): Promise<void> => {
    try {
      takeIn(await dropped);
      setLost(false);
    } catch {
      setLost(true);
    }
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, as the desk wakes.
  useEffect(() => {
    setAwake(true);
    // The attribute is in no standard, so no types know it; every browser does.
    folder.current?.setAttribute('webkitdirectory', '');
    for (const { current } of [files, folder]) if (current?.files?.length) takeChosen(current, takeIn);
    takeEarly()?.then(takeIn, () => setLost(true));
  }, []);
  return {
    ...{ awake, files, folder, over, lost },
    choose: ({ currentTarget }) => takeChosen(currentTarget, takeIn),
    listen: listening(setOver, takeDropped),
  };
}

function takeChosen(input: HTMLInputElement, takeIn: (files: Files) => void): void {
  if (input.files) takeIn(chosenFiles(input.files));
  // The same files can be chosen again.
  input.value = '';
}

function listening(
  setOver: (over: boolean) => void,
  takeDropped: (dropped: Promise<Files>) => Promise<void>,
): Tray['listen'] {
  return {
    onDragOver: (event) => {
      event.preventDefault();
      setOver(true);
    },
    onDragLeave: () => setOver(false),
    onDrop: async (event) => {
      event.preventDefault();
      setOver(false);
      if (event.dataTransfer) await takeDropped(droppedFiles(event.dataTransfer.items));
    },
  };
}
