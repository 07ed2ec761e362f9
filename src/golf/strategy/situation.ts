import { Failure } from '#faults/failure.ts'
import type { Lie } from '#golf/player/player.ts'
import type { Situation } from './evaluate-stroke.ts'
import { lieOfGround } from './lie-of-ground.ts'
import { groundOf, type Places, placeAt } from './places.ts'

/**
 * Where a stroke is played from. Without a place it is the markers. Throws a Failure for a place off the survey, in a
 * penalty area or out of bounds, and for a ball on a green that the survey does not show.
 */
export function situationOf(
  question: Pick<Situation, 'sit' | 'stance'> & {
    readonly from?: readonly [x: number, y: number]
    readonly lie?: Lie
  },
  places: Places,
): Situation {
  const { from, sit, stance } = question
  if (!from) return { x: 0, y: 0, lie: question.lie ?? 'tee', sit, stance }
  const [x, y] = from
  const { coarse } = places
  const where = `from ${x.toFixed(1)},${y.toFixed(1)}`
  const column = Math.round((x - coarse.originX) / coarse.resolution)
  const row = Math.round((y - coarse.originY) / coarse.resolution)
  if (column < 0 || row < 0 || column >= coarse.columns || row >= coarse.rows)
    throw new Failure('MAR-PLAN-004', 'The ball lies outside the surveyed corridor of the hole.', where)
  const place = placeAt(places, x, y)
  const lie = question.lie ?? lieOfGround(groundOf(places, place))
  if (lie === null)
    throw new Failure(
      'MAR-PLAN-005',
      'The ball lies in a penalty area or out of bounds: give the place of the drop, or a lie.',
      where,
    )
  if (lie === 'green' && groundOf(places, place) !== 'green')
    throw new Failure('MAR-PLAN-007', 'There is no green where the ball lies: give another lie.', where)
  return { x, y, lie, sit, stance }
}
