// Simulated players: how often a plan calls a choice clear that is wrong for the true player. Prints the table of
// docs/method.md, "How sure": `npm run false-clear-study -- 300`.
import { falseClearTable } from './false-clear/false-clear-table.ts'
import { falseClearTrials } from './false-clear/false-clear-trials.ts'

const players = Number(process.argv[2] ?? 300)
const trials = falseClearTrials({ players, shots: [10, 100, 1000], draws: 16, cellMetres: 6 }, (done) =>
  process.stderr.write(`\r${done} of ${players} players`),
)
process.stdout.write(`\n${falseClearTable(trials)}\n`)
