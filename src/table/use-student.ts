import { useEffect } from 'preact/hooks';
import { writtenStudent } from '../exchange/student.ts';
import { local } from './store/own-storage.ts';

const KEY = 'gorgeline.student';

/**
 * The learner's name, written once for all exercises. It goes nowhere but into the files the learner saves. `write` is what
 * the learner wrote; a name that comes with somebody's file is not kept for the next exercise.
 */
export function useStudent(student: string, note: (name: string) => void): (name: string) => void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: the kept name is taken up once, as the page wakes.
  useEffect(() => {
    const kept = local.read(KEY) ?? '';
    if (student === '' && kept !== '') note(kept);
  }, []);
  return (typed) => {
    const { student: name } = writtenStudent({ student: typed, number: '' });
    note(name);
    local.write(KEY, name);
  };
}
