import type { Hole } from '#golf/course/hole.ts'
import { headingCrossings } from '#numbers/geometry/heading-crossings.ts'
import type { Point } from '#numbers/geometry/point.ts'

/** To the front edge, the middle and the back edge of the green on the way to the pin, metres. */
export interface GreenNumbers {
  readonly front: number
  readonly middle: number
  readonly back: number
}

/** The numbers of a hole's green from a place; all three the pin's distance where the survey has no green on the way. */
export function greenNumbers({ green, pin }: Pick<Hole, 'green' | 'pin'>, [x, y]: Point): GreenNumbers {
  const toPin = Math.atan2(pin[0] - x, pin[1] - y)
  const crossings = green ? headingCrossings(green, [x, y], toPin) : []
  const front = crossings[0] ?? Math.hypot(pin[0] - x, pin[1] - y)
  const back = crossings.at(-1) ?? front
  return { front, middle: (front + back) / 2, back }
}

/** The number that a total is nearest to, or a layup when it is well short of them all. */
export function numberOfTotal(numbers: GreenNumbers, total: number): 'front' | 'middle' | 'back' | 'layup' {
  if (total < numbers.front - SHORT_OF_GREEN_METRES) return 'layup'
  return (['front', 'middle', 'back'] as const).reduce((nearest, number) =>
    Math.abs(numbers[number] - total) < Math.abs(numbers[nearest] - total) ? number : nearest,
  )
}

/** A shot whose total ends this far short of the green is a layup, metres. */
const SHORT_OF_GREEN_METRES = 8
