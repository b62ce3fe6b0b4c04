import type { VNode } from 'preact';
import { type Say, sayFor } from '../say.ts';

interface InUnitsProps {
  readonly say: Say;
  readonly words: (say: Say) => string;
}

/**
 * Words with lengths in them, in both units; the style sheet shows the reader's. The built page cannot know the reader, and
 * words that change as the table wakes would move what stands around them.
 */
export function InUnits({ say, words }: InUnitsProps): VNode {
  const { language } = say.reader;
  const [cm, inches] = [words(sayFor({ language, unit: 'cm' })), words(sayFor({ language, unit: 'in' }))];
  // Words without a length are the same to both.
  if (cm === inches) return <>{cm}</>;
  return (
    <>
      <span class="in-cm">{cm}</span>
      <span class="in-inches">{inches}</span>
    </>
  );
}
