import { Failure } from '#faults/failure.ts'
import type { Day } from '#golf/course/day.ts'
import { encodeDay } from '#golf/course/encode-day.ts'
import { parseDay } from '#golf/course/parse-day.ts'
import { completePlayer } from '#golf/player/complete-player.ts'
import { encodePlayer } from '#golf/player/encode-player.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import type { Player } from '#golf/player/player.ts'
import { dayParts } from './calendar.ts'
import type { PlanNumbersFile } from './plan-numbers-file.ts'

/** The numbers that the plans of a round stood on, as they were then: a recap is held against them, not against today's. */
export interface PlanNumbers {
  /** `card`: of a card that was made; `kept`: what was kept when the round was written down, of which no card is known. */
  readonly from: 'card' | 'kept'
  /** Day they are of, `2026-07-23`. */
  readonly date: string
  readonly player: Player
  /** `null` = a calm, normal day. */
  readonly day: Day | null
}

/** The same without whence they are. */
export type Planned = Pick<PlanNumbers, 'player' | 'day'>

/** Numbers for a file. What changes no plan is left out: sentences of cards, and which rounds were learned from. */
export function encodePlanNumbers({ from, date, player, day }: PlanNumbers): PlanNumbersFile {
  const { sentences: _, learnedRounds: __, ...numbers } = player
  return {
    from,
    date,
    player: JSON.parse(encodePlayer(numbers)) as unknown,
    ...(day === null ? {} : { day: JSON.parse(encodeDay(day)) as unknown }),
  }
}

/** Numbers from a file; `where` is their place in it. Throws MAR-ROUND-016, or the Failure of what reads the player or the day. */
export function parsePlanNumbers(file: PlanNumbersFile, where: string): PlanNumbers {
  const { from, date, player, day } = file
  if (from !== 'card' && from !== 'kept')
    throw new Failure('MAR-ROUND-016', 'Plan numbers are from a card, or kept.', `${where}.from`)
  if (typeof date !== 'string' || dayParts(date) === null)
    throw new Failure(
      'MAR-ROUND-016',
      'Plan numbers need the date they are of, like 2026-05-02.',
      `${where}.date`,
    )
  return {
    from,
    date,
    player: completePlayer(parsePlayer(JSON.stringify(player ?? null), `${where}.player`)),
    day: day == null ? null : parseDay(JSON.stringify(day), `${where}.day`),
  }
}
