import { completePlayer } from './complete-player.ts'
import { encodePlayer } from './encode-player.ts'
import { parsePlayer } from './parse-player.ts'
import type { Player } from './player.ts'
import type { AnswerFault } from './questions/answer-fault.ts'
import { readCarries } from './questions/read-carries.ts'

/** Carries a person knows, metres by the names of the clubs. */
export type OwnCarries = Readonly<Record<string, number>>

/**
 * Own carries from what was typed beside the names of the clubs, in `units` unless a unit follows; blank ones are not
 * known. Or what is wrong with them: a slip, or a short club that would fly past a long one.
 */
export function readOwnCarries(
  texts: Readonly<Record<string, string>>,
  units: 'yards' | 'metres',
): OwnCarries | AnswerFault {
  const typed = Object.entries(texts).filter(([, text]) => text.trim() !== '')
  const carries = readCarries(
    typed.map(([club, text]) => `${club}: ${text.trim().replace(',', '.')}`).join('; '),
    units,
  )
  return 'code' in carries ? carries : Object.fromEntries(carries.map(({ name, metres }) => [name, metres]))
}

/** Whether what was typed is wrong. */
export function isCarryFault(read: OwnCarries | AnswerFault): read is AnswerFault {
  return typeof read.code === 'string'
}

/**
 * The player with carries of their own in place of the file's: as said, not measured. The lengths of all other clubs are
 * filled in from these and marked as guesses; spread, shape, lies and the short game stay, without the shots that were
 * behind them. The same player when none is typed.
 */
export function withOwnCarries(player: Player, carries: OwnCarries): Player {
  const typed = Object.keys(carries)
  if (typed.length === 0) return player
  const file = parsePlayer(encodePlayer(player), player.name)
  return completePlayer({
    ...file,
    said: { ...file.said, carries: typed },
    bag: 'as-listed',
    clubs: file.clubs.map(({ carry_m: _carry, total_m: _total, ...club }) => {
      const own = carries[club.name]
      return { ...club, ...(own === undefined ? {} : { carry_m: own }), shots: 0 }
    }),
  })
}
