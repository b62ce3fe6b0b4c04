import type { VNode } from 'preact';
import type { TargetReport } from '../../grader/result.ts';
import { spelled } from '../../words/unseen.ts';
import type { Say } from '../say.ts';

interface SaidProps {
  readonly report: TargetReport;
  readonly say: Say;
}

/** What the marker says of a target: a paragraph, or one for each fault where there are several. */
export function Said({ report, say }: SaidProps): VNode {
  return (
    <>
      {report.paragraphs.map((sentences) => {
        const words = spelled(sentences.map((sentence) => say.message(sentence)).join(' '));
        return <p key={words}>{words}</p>;
      })}
    </>
  );
}
