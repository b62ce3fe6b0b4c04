import type { VNode } from 'preact';
import { useRef } from 'preact/hooks';
import type { ToolId } from '../model/bench.ts';
import { type Tool, toolFor, toolGroups, tools } from '../model/tools.ts';
import type { Say } from '../say.ts';
import { ToolDrawing } from './ToolDrawing.tsx';
import { typeOn } from './type-on.ts';

interface ToolsProps {
  readonly inHand: ToolId | null;
  readonly say: Say;
  readonly onTake: (use: ToolId, byKeys: boolean) => void;
}

/** The tools along the table's edge. One stop for Tab; arrow keys go from tool to tool. */
export function Tools({ inHand, say, onTake }: ToolsProps): VNode {
  const edge = useRef<HTMLDivElement>(null);
  const held = inHand === null ? null : toolFor(inHand);
  const stop = held ?? tools[0];
  return (
    <div
      class="tools"
      role="toolbar"
      aria-label={say('table.tools')}
      ref={edge}
      onKeyDown={(event) => {
        // A mouse leaves the focus on the tool it took, which has no use for words.
        if (!typeOn(event)) goAlong(event, edge.current);
      }}
    >
      {toolGroups.map((group) => (
        <div key={group.id} class="tools-group">
          <p class="tools-name">{say(`table.group.${group.id}`)}</p>
          {group.tools.map((tool) => (
            <ToolButton key={tool.id} tool={tool} held={tool === held} stop={tool === stop} say={say} onTake={onTake} />
          ))}
        </div>
      ))}
    </div>
  );
}

interface ToolButtonProps {
  readonly tool: Tool;
  readonly held: boolean;
  readonly stop: boolean;
  readonly say: Say;
  readonly onTake: ToolsProps['onTake'];
}

function ToolButton({ tool, held, stop, say, onTake }: ToolButtonProps): VNode {
  return (
    <button
      type="button"
      class="tool"
      data-tool={tool.id}
      aria-pressed={held}
      title={tool.uses.map((use) => say(`table.use.${use}`)).join(', ')}
      tabIndex={stop ? 0 : -1}
      // A click without a press of the pointer comes from the keyboard.
      onClick={(event) => onTake(tool.uses[0] as ToolId, event.detail === 0)}
    >
      <ToolDrawing id={tool.id} />
      <span>{say(`table.tool.${tool.id}`)}</span>
    </button>
  );
}

const STEPS: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

function goAlong(event: KeyboardEvent, edge: HTMLElement | null): void {
  const buttons = [...(edge?.querySelectorAll<HTMLButtonElement>('.tool') ?? [])];
  const at = buttons.indexOf(document.activeElement as HTMLButtonElement);
  const step = STEPS[event.key];
  const to =
    event.key === 'Home' ? 0 : event.key === 'End' ? buttons.length - 1 : step === undefined ? null : at + step;
  if (to === null || at < 0) return;
  event.preventDefault();
  buttons[(to + buttons.length) % buttons.length]?.focus();
}
