import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** The test files that take longest, the longest first. */
const LONGEST: readonly string[] = ['grader/bodies', 'grader/references', 'grader/tolerances'];

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
