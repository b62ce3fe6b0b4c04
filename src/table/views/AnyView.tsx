import type { VNode } from 'preact';
import { type Strictness, toleranceOf } from '../../grader/tolerance.ts';
import { RollReport } from './RollReport.tsx';
import { WalkView } from './WalkView.tsx';
import { type ViewProps, WornView } from './WornView.tsx';
import type { ViewId } from './which.ts';

interface AnyViewProps extends ViewProps {
  readonly view: ViewId;
  readonly strictness?: Strictness;
}

/** The view asked for. Thresholds are the grader's: a mark's for the outer edge, a seam's for walking. */
export function AnyView({ view, strictness = 'workroom', ...rest }: AnyViewProps): VNode {
  if (view === 'worn') return <WornView {...rest} />;
  if (view === 'roll') return <RollReport {...rest} within={toleranceOf('mark', strictness, 'mm')} />;
  return <WalkView {...rest} within={toleranceOf('seam', strictness, 'mm')} />;
}
