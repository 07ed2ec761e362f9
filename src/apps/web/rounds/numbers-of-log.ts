import { dayOfRound } from '#golf/round/holes-of-rounds.ts'
import type { PlanNumbers } from '#golf/round/plan-numbers.ts'
import { cardOn } from '../documents/kept-cards.ts'
import { loadPlayer } from '../documents/load-player.ts'
import { loadDays } from './kept-round.ts'
import type { TypedLog } from './typed-log.ts'

/** What a round on paper is held against: the card its player had that day, or else what is kept now. Throws a Failure with the server's code. */
export async function numbersOf({
  courseId,
  playerId,
  date,
}: Pick<TypedLog, 'courseId' | 'playerId' | 'date'>): Promise<PlanNumbers | null> {
  if (playerId === '') return null
  const card = await cardOn({ courseId, playerId }, date)
  if (card !== null) return card
  const [player, days] = await Promise.all([loadPlayer(playerId), loadDays()])
  const day = dayOfRound(
    { date },
    days.map((one) => one.day),
  )
  return { from: 'kept', date: new Date().toLocaleDateString('sv-SE'), player, day }
}
