import { Failure } from '#faults/failure.ts'
import type { FiledPlayer } from './batch-tasks.ts'
import { loadPlayer } from './load-player.ts'
import { realOf } from './real-of.ts'

/** Players from their files, in this order. Throws what is wrong with a file, and MAR-USAGE-002 for one that is given twice. */
export function loadField(files: readonly string[]): FiledPlayer[] {
  const seen = new Set<string>()
  return files.map((file) => {
    const real = realOf(file)
    if (seen.has(real))
      throw new Failure('MAR-USAGE-002', `${file} is given twice: each player is planned once.`, '--player')
    seen.add(real)
    return { file, player: loadPlayer(file) }
  })
}
