// A Vitest reporter that writes the counts and the reasons of skipped tests to the file named in
// MARRAM_TEST_OUTCOME, for the closing line of `npm test`.
import { writeFileSync } from 'node:fs'

export default class OutcomeReporter {
  onTestRunEnd(modules, unhandledErrors) {
    const outcome = { files: modules.length, passed: 0, failed: unhandledErrors.length, skipped: [] }
    for (const module of modules) {
      let failedHere = 0
      for (const test of module.children.allTests()) {
        const result = test.result()
        if (result.state === 'passed') outcome.passed += 1
        else if (result.state === 'skipped')
          outcome.skipped.push({
            name: `${module.relativeModuleId}: ${test.fullName}`,
            reason: result.note ?? 'no reason given',
          })
        else failedHere += 1
      }
      // A file that does not load, or a suite whose hook fails, has failed although no test of it did.
      if (failedHere === 0 && module.state() === 'failed') failedHere = 1
      outcome.failed += failedHere
    }
    if (process.env.MARRAM_TEST_OUTCOME)
      writeFileSync(process.env.MARRAM_TEST_OUTCOME, JSON.stringify(outcome))
  }
}
