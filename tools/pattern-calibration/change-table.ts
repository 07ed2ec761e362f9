import type { ChangeTrial } from './change-trials.ts'

/** Ends of the rows, chances of a real change. */
const ENDS = [0, 0.1, 0.2, 0.3, 0.5, 0.7, 0.9, 1.0001] as const

/** Stated chances of change beside how many had changed, as a table of Markdown. */
export function changeTable(trials: readonly ChangeTrial[]): string {
  const rows = ENDS.slice(1).map((high, index) => {
    const low = ENDS[index] as number
    const own = trials.filter(({ chance }) => chance >= low && chance < high)
    const changed = own.filter(({ hasChanged }) => hasChanged).length / own.length
    const stated = own.reduce((sum, { chance }) => sum + chance, 0) / own.length
    const error = Math.sqrt((changed * (1 - changed)) / own.length)
    const cells = own.length === 0 ? ['–', '–'] : [percent(stated), `${percent(changed)} ± ${percent(error)}`]
    return `| ${percent(low)} to ${percent(Math.min(1, high))} | ${own.length} | ${cells.join(' | ')} |`
  })
  return [
    '| chance stated, % | numbers | mean chance stated, % | had changed, % |',
    '| --- | --- | --- | --- |',
    ...rows,
  ].join('\n')
}

/** Shares of the intervals that hold the truth, of numbers that had changed and of those that had not. */
export function changedCoverage(trials: readonly ChangeTrial[]): string {
  const rows = [true, false].map((hasChanged) => {
    const own = trials.filter((trial) => trial.hasChanged === hasChanged)
    return `| ${hasChanged ? 'had changed' : 'had not'} | ${own.length} | ${share(own, ({ isInHalf }) => isInHalf)} | ${share(own, ({ isInNinety }) => isInNinety)} |`
  })
  const all = `| all | ${trials.length} | ${share(trials, ({ isInHalf }) => isInHalf)} | ${share(trials, ({ isInNinety }) => isInNinety)} |`
  return [
    '| numbers that | numbers | in the 50 % interval, % | in the 90 % interval, % |',
    '| --- | --- | --- | --- |',
    ...rows,
    all,
  ].join('\n')
}

function share(trials: readonly ChangeTrial[], is: (trial: ChangeTrial) => boolean): string {
  const held = trials.filter(is).length / trials.length
  return `${(100 * held).toFixed(1)} ± ${(100 * Math.sqrt((held * (1 - held)) / trials.length)).toFixed(1)}`
}

function percent(share: number): string {
  return `${Math.round(100 * share)}`
}
