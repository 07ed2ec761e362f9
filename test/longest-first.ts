import { BaseSequencer, type TestSpecification } from 'vitest/node'

/**
 * Files that are short to read and long to run. A fresh clone has no times of a run before, so that large files are begun
 * first; one of these, begun last, would leave the other worker idle.
 */
const LONG_TO_RUN = [
  'readme',
  'cli-plan',
  'published-values',
  'levels-published',
  'levels-doc',
  'false-clear',
  'putting-lesson',
  'practice-study',
]

/** Begins what is known to be long before the rest of its project. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files)
    const isLong = ({ moduleId }: TestSpecification): boolean =>
      LONG_TO_RUN.some((name) => moduleId.endsWith(`/${name}.test.ts`))
    // A worker keeps its modules from file to file of one project.
    return [...new Set(sorted.map(({ project }) => project.name))].flatMap((name) => {
      const own = sorted.filter(({ project }) => project.name === name)
      return [...own.filter(isLong), ...own.filter((file) => !isLong(file))]
    })
  }
}
