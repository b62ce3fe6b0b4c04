import { useEffect, useState } from 'preact/hooks';
import { storageIn } from './store/storage.ts';

const KEY = 'gorgeline.student';

const local = storageIn(() => window.localStorage);

/** The learner's name, written once for all exercises. It goes nowhere but into the files the learner saves. */
export function useStudent(): readonly [string, (name: string) => void] {
  const [student, setStudent] = useState('');
  useEffect(() => setStudent((now) => (now === '' ? (local.read(KEY) ?? '') : now)), []);
  const write = (name: string): void => {
    setStudent(name);
    local.write(KEY, name);
  };
  return [student, write];
}
