import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** The test files that take longest, the longest first. */
export const LONGEST: readonly string[] = [
  'grader/bodies/others',
  'grader/bodies/outer-edge',
  'grader/bodies/from-draft-to-pattern',
  'cli/grade-scale',
  'grader/tolerances',
  'grader/references',
];

/** Begins with the longest files: one of them begun last keeps one worker busy long after the other has nothing left to do. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const others = await super.sort(files);
    return others.toSorted((a, b) => place(a) - place(b));
  }
}

function place({ moduleId }: TestSpecification): number {
  const at = LONGEST.findIndex((file) => moduleId.endsWith(`/tests/${file}.test.ts`));
  return at < 0 ? LONGEST.length : at;
}
