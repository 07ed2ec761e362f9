// Fails when a file looks through a wall of .dependency-cruiser.mjs, and says what to do instead. With a folder as its
// argument it reads the `src` of that folder, which is how a test shows that the walls hold.
import { cruiseHouse } from './cruise.mjs'

/** Fewer files than this were surely not all of them: a parser that reads nothing finds nothing wrong. */
const FEWEST_FILES = 200

const elsewhere = process.argv[2]
const { summary } = await (elsewhere === undefined ? cruiseHouse() : cruiseHouse(['src'], elsewhere))
const advice = new Map(summary.ruleSetUsed.forbidden.map((rule) => [rule.name, rule.comment]))
for (const { rule, from, to, cycle } of summary.violations) {
  console.log(`${rule.name}: ${from} → ${cycle ? cycle.map((step) => step.name).join(' → ') : to}`)
  console.log(`  ${advice.get(rule.name)}`)
}
if (summary.totalCruised < FEWEST_FILES)
  console.log(`Only ${summary.totalCruised} files were read; at least ${FEWEST_FILES} were expected.`)
console.log(
  `${summary.totalCruised} files, ${summary.totalDependenciesCruised} imports, ${summary.violations.length} through a wall`,
)
process.exitCode = summary.violations.length === 0 && summary.totalCruised >= FEWEST_FILES ? 0 : 1
