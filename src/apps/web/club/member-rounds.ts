import type { Player } from '#golf/player/player.ts'
import type { MemberRound } from '#golf/round/club-rounds.ts'
import type { FieldPlayer } from '../group/use-field.ts'
import type { RoundsOfPlayer } from '../rounds/closed-of-players.ts'

/** Rounds of those players who have closed ones on the course. */
export interface MembersRounds {
  /** Ids of the players, by the number under which their rounds stand. */
  readonly ids: readonly string[]
  /** Named by a number, so that nothing that is said of one tells whose it is. */
  readonly rounds: readonly MemberRound[]
  /** Rounds on the course that are left out: open, kept twice, or of nobody who is kept. */
  readonly left: number
}

/** Numbers the players and their rounds. */
export function membersRounds(of: readonly RoundsOfPlayer[], left: number): MembersRounds {
  const rounds = of
    .flatMap((one, member) => one.rounds.map(({ round, day }) => ({ member, round, day })))
    .map((round, index) => ({ ...round, name: `round ${index + 1}` }))
  return { ids: of.map(({ player }) => player.id), rounds, left }
}

/** Members whose files were read, and how many rounds are left out. */
export interface Members {
  readonly players: readonly Player[]
  readonly rounds: MembersRounds['rounds']
  readonly left: number
}

/** Numbers the members whose files can be read anew; `null` while any is still on its way. */
export function readMembers(
  { ids, rounds, left }: MembersRounds,
  field: Readonly<Record<string, FieldPlayer>>,
): Members | null {
  if (ids.some((id) => field[id] === undefined)) return null
  const players: Player[] = []
  const numbers = ids.map((id) => {
    const one = field[id]
    return one !== undefined && 'player' in one ? players.push(one.player) - 1 : null
  })
  const read = rounds.flatMap((round) => {
    const member = numbers[round.member]
    return member == null ? [] : [{ ...round, member }]
  })
  return { players, rounds: read, left: left + rounds.length - read.length }
}
