import { useEffect, useState } from 'preact/hooks';
import { capitalised } from '../words/say.ts';
import type { Bench } from './model/bench.ts';
import type { Say } from './say.ts';

/**
 * What the live region says: the last change of the bench, or whatever was said since, as a sentence with a capital though it begin
 * with a name. The same words twice are said twice.
 */
export function useSpoken(bench: Bench, say: Say): readonly [string, (text: string) => void] {
  const [spoken, setSpoken] = useState('');
  const speak = (text: string): void => {
    const sentence = capitalised(text, say.reader.language);
    setSpoken((before) => (before === sentence ? `${sentence}\u00a0` : sentence));
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: said once a change; another unit does not say it again.
  useEffect(() => {
    if (bench.said) speak(say.message(bench.said));
  }, [bench.turn]);
  return [spoken, speak];
}
