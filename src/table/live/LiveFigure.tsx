import type { VNode } from 'preact';
import { useMemo, useRef, useState } from 'preact/hooks';
import type { Sheet } from '../../drafting/sheet.ts';
import { usualWorn } from '../../garment/collar/worn-plan.ts';
import type { Reader } from '../../words/say.ts';
import { SheetDrawing } from '../drawing/SheetDrawing.tsx';
import './live.css';
import { KeptButton } from '../parts/KeptButton.tsx';
import { sayFor } from '../say.ts';
import { useReader } from '../use-reader.ts';
import { AnyView } from '../views/AnyView.tsx';
import { dragTo, nudge } from './constrain.ts';
import { LiveHandles } from './LiveHandles.tsx';
import { atRest, heldBy, type LiveHandle, type LiveScene, type LiveState } from './live-scene.ts';
import { liveDrawing, liveSheet, markOn } from './live-sheet.ts';
import { saidUnder } from './said.ts';

export interface LiveFigureProps {
  readonly scene: LiveScene;
  /** Unique on the page. */
  readonly id: string;
  readonly language?: string;
}

/**
 * A figure of a lesson that can be dragged. The built page holds it drawn at rest, and says so; once awake the ringed
 * marks move by pointer, finger or arrow keys, and the draft is replayed at every move.
 */
export function LiveFigure({ scene, id, language = 'en' }: LiveFigureProps): VNode {
  const reader = useReader(language);
  const [state, setState] = useState<LiveState>(atRest);
  const sheet = useMemo(() => liveSheet(scene, state), [scene, state]);
  const speak = useMemo(() => sayFor(reader), [reader]);
  const { handles, view } = scene;
  const still = handles.length === 0 || view?.alone === true;
  const said = saidUnder(scene, sheet.measures, reader.unit);
  return (
    <div class="live">
      {view?.alone ? null : (
        <MovedSheet scene={scene} id={id} reader={reader} sheet={sheet} state={state} onState={setState} />
      )}
      {view ? <AnyView view={view.shows} plan={view.plan ?? usualWorn} sheet={sheet} id={id} say={speak} /> : null}
      <p class="live-says" aria-live="polite">
        {said && speak.message(said)}
      </p>
      {still ? null : (
        <p class="live-help">
          <span>{speak('table.live-hint', { marks: handles.length })}</span>{' '}
          <KeptButton class="quiet-button" idle={state === atRest} onPress={() => setState(atRest)}>
            {speak('table.live-back')}
          </KeptButton>
        </p>
      )}
    </div>
  );
}

interface MovedSheetProps {
  readonly scene: LiveScene;
  readonly id: string;
  readonly reader: Reader;
  readonly sheet: Sheet;
  readonly state: LiveState;
  readonly onState: (state: LiveState) => void;
}

/** The sheet with what can be dragged on it. */
function MovedSheet({ scene, id, reader, sheet, state, onState }: MovedSheetProps): VNode {
  const held = useRef(state);
  held.current = state;
  const drawing = useMemo(() => liveDrawing(scene, sheet, reader.unit), [scene, sheet, reader.unit]);
  const rings = useMemo(() => scene.handles.flatMap((handle) => markOn(sheet, heldBy(handle)) ?? []), [scene, sheet]);
  const says = scene.pictures === undefined ? {} : { says: scene.pictures };
  return (
    <div class="live-sheet">
      <SheetDrawing drawing={drawing} reader={reader} id={id} rings={rings} {...says} />
      <LiveHandles
        scene={scene}
        state={state}
        sheet={sheet}
        reader={reader}
        onDrag={(handle: LiveHandle, to) => onState(dragTo(scene, held.current, handle, to, reader.unit))}
        onNudge={(handle: LiveHandle, way) => onState(nudge(scene, held.current, handle, way, reader.unit))}
      />
    </div>
  );
}
