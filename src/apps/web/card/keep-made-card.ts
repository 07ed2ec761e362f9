import type { Course } from '#golf/course/course.ts'
import type { Day } from '#golf/course/day.ts'
import { pageName } from '#golf/player/first-name.ts'
import type { Player } from '#golf/player/player.ts'
import { encodePlanNumbers } from '#golf/round/plan-numbers.ts'
import { keepCard } from '../documents/kept-cards.ts'

/** Who gets a card, where, and on which day; `dayId` empty = calm and normal. */
export interface MadeCard {
  readonly course: Course
  readonly courseId: string
  readonly player: Player
  readonly playerId: string
  readonly day: Day
  readonly dayId: string
}

/** Keeps what a card with plans was made by as it leaves the desk, for the recap of a round by it. Throws a Failure with the server's code. */
export function keepMadeCard({ course, courseId, player, playerId, day, dayId }: MadeCard): Promise<void> {
  const today = new Date().toLocaleDateString('sv-SE')
  // One made after its day is not what was played by then: it counts from now on.
  const date = day.date === null || day.date < today ? today : day.date
  const planNumbers = encodePlanNumbers({ from: 'card', date, player, day: dayId === '' ? null : day })
  const name = pageName(player.name, player.age)
  return keepCard({ course: course.name, courseId, player: name, playerId, date, planNumbers })
}
