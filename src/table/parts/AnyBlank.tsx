import type { VNode } from 'preact';
import type { Filling } from '../model/bench.ts';
import { BlankBox, type BlankBoxProps } from './BlankBox.tsx';

interface AnyBlankProps extends BlankBoxProps {
  /** What stands in the blank. */
  readonly value: Filling | undefined;
}

/** A blank of any kind. One that takes a list shows what it has taken, and goes on taking. */
export function AnyBlank({ value, ...box }: AnyBlankProps): VNode {
  const { takes } = box.blank;
  if (takes !== 'objects' && takes !== 'run') return <BlankBox {...box} />;
  const taken = Array.isArray(value) ? (value as readonly unknown[]) : [];
  if (taken.length === 0) return <BlankBox {...box} text="" typed="" />;
  const last = box.say('table.take-out-last');
  return (
    <>
      <span class="blank-taken">{box.text}</span>
      <button
        type="button"
        class="blank-less"
        aria-label={last}
        title={last}
        // The press must not end the filling of the blank beside it.
        onPointerDown={(event) => event.preventDefault()}
        onClick={() => (taken.length === 1 ? box.onClear() : box.onFill(taken.slice(0, -1) as unknown as Filling))}
      >
        −
      </button>
      <BlankBox {...box} text="" typed="" wanted={box.say('table.blank.next')} />
    </>
  );
}
