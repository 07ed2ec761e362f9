import { practiceWords } from '../../src/golf/round/practice-words.ts'
import type { PartTrial, PracticeTrial } from './practice-trials.ts'

/** Leads within so many of their own standard errors are told from nothing. */
const SURE_ERRORS = 2

/** What play says of the advice: right, wrong, or that it cannot tell the two best parts apart. */
export type Verdict = 'right' | 'wrong' | 'too close to tell'

/** Whether the advised part saved most in play. */
export function verdictOf({ lead, standardError }: PracticeTrial): Verdict {
  if (Math.abs(lead) <= SURE_ERRORS * standardError) return 'too close to tell'
  return lead > 0 ? 'right' : 'wrong'
}

/** The study as rows of a Markdown table. */
export function practiceTable(trials: readonly PracticeTrial[]): string[] {
  return [
    '| golfer | worse than usual | rates | advised first: advised, played | best in play | lead of the advised part | |',
    '|---|---|---|---|---|---|---|',
    ...trials.map((trial) => {
      const { golfer, rates, parts, lead, standardError } = trial
      const [first] = parts as readonly [PartTrial, ...PartTrial[]]
      const best = parts.reduce((most, one) => (one.played > most.played ? one : most))
      const { handicapIndex, hand } = golfer.player
      return `| ${handicapIndex}, ${hand} | ${golfer.fault === null ? 'nothing' : practiceWords(golfer.fault)} | ${rates} | ${practiceWords(first.part)}: ${first.advised.toFixed(2)}, ${first.played.toFixed(2)} | ${practiceWords(best.part)}: ${best.advised.toFixed(2)}, ${best.played.toFixed(2)} | ${lead.toFixed(2)} ± ${standardError.toFixed(2)} | ${verdictOf(trial)} |`
    }),
  ]
}

/** The count of the verdicts, and how far advice and play lie apart, in sentences. */
export function practiceSummary(trials: readonly PracticeTrial[]): string {
  const count = (verdict: Verdict): number => trials.filter((trial) => verdictOf(trial) === verdict).length
  const told = count('right') + count('wrong')
  const ahead = trials.filter(({ lead }) => lead > 0).length
  const gaps = trials.flatMap(({ parts }) => parts.map(({ advised, played }) => played - advised))
  const rms = Math.sqrt(gaps.reduce((sum, gap) => sum + gap * gap, 0) / gaps.length)
  return [
    `Of ${trials.length} cases play can tell ${told}: right ${count('right')}, wrong ${count('wrong')}; too close to tell ${count('too close to tell')}.`,
    `By the bare means, told or not, the advised part is ahead in ${ahead} of ${trials.length}.`,
    `What a part is worth by the advice and in play differs by ${rms.toFixed(3)} of a stroke a round (root mean square of ${gaps.length} figures).`,
  ].join('\n')
}
