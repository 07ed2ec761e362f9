import type { Day } from '#golf/course/day.ts'
import type { Player } from '#golf/player/player.ts'
import type { MemberRound } from '#golf/round/club-rounds.ts'
import type { FieldPlayer } from '../group/use-field.ts'
import { closedRounds } from '../rounds/closed-rounds.ts'
import { isOnCourse, type KeptRoundFile, type Named } from '../rounds/kept-round.ts'
import { roundsOf } from '../season/rounds-of-season.ts'

/** Rounds of those players who have closed ones on the course. */
export interface MembersRounds {
  /** Ids of the players, by the number under which their rounds stand. */
  readonly ids: readonly string[]
  /** Named by a number, so that nothing that is said of one tells whose it is. */
  readonly rounds: readonly MemberRound[]
  /** Rounds on the course that are left out: open, kept twice, or of nobody who is kept. */
  readonly left: number
}

/** Gathers the rounds of every kept player on a course. */
export function membersRounds(
  all: readonly KeptRoundFile[],
  course: Named,
  players: readonly Named[],
  days: readonly Day[],
): MembersRounds {
  const ids: string[] = []
  const rounds: MemberRound[] = []
  for (const player of players) {
    const own = closedRounds(roundsOf(all, course, player), days).rounds
    if (own.length === 0) continue
    const member = ids.push(player.id) - 1
    for (const { round, day } of own) rounds.push({ member, name: `round ${rounds.length + 1}`, round, day })
  }
  const onCourse = all.filter(({ belongs }) => isOnCourse(belongs, course)).length
  return { ids, rounds, left: onCourse - rounds.length }
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
