import { dayOfRound } from '#golf/round/holes-of-rounds.ts'
import type { PlanNumbers } from '#golf/round/plan-numbers.ts'
import { cardOn } from '../documents/kept-cards.ts'
import { loadPlayer } from '../documents/load-player.ts'
import { loadDays } from './kept-round.ts'
import type { TypedLog } from './typed-log.ts'

type OfLog = Pick<TypedLog, 'courseId' | 'playerId' | 'date'>

/**
 * What a round on paper is held against: the card its player had that day, or else what is kept now. `null` where neither can be
 * read, as without the server: what was typed is kept all the same, and its recap says by whose numbers it is.
 */
export async function numbersOf(log: OfLog): Promise<PlanNumbers | null> {
  return log.playerId === '' ? null : found(log).catch(() => null)
}

async function found({ courseId, playerId, date }: OfLog): Promise<PlanNumbers> {
  const card = await cardOn({ courseId, playerId }, date)
  if (card !== null) return card
  const [player, days] = await Promise.all([loadPlayer(playerId), loadDays()])
  const day = dayOfRound(
    { date },
    days.map((one) => one.day),
  )
  return { from: 'kept', date: new Date().toLocaleDateString('sv-SE'), player, day }
}
