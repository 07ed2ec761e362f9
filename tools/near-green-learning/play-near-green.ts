import { groundReader } from '#golf/course/ground-at.ts'
import type { Lie } from '#golf/player/player.ts'
import type { Spot } from '#golf/round/follow-hole.ts'
import type { RecapHole } from '#golf/round/judge-choice.ts'
import type { FinishLetter, RoundHole, RoundStroke } from '#golf/round/round.ts'
import { FINISH_SD_METRES } from '#golf/round/settings.ts'
import { lieOfGround } from '#golf/strategy/lie-of-ground.ts'
import { groundOf } from '#golf/strategy/places.ts'
import { distance, type Point } from '#numbers/geometry/point.ts'
import { shortGame } from '../season-study/short-game.ts'

/** How putts are written down: one by one with what each left, or counted with the length of the first. */
export type PuttLogging = 'each' | 'counted'

/** Where a simulated approach may end: on the green, and off it within reach of a chip, by place number. */
interface Starts {
  readonly green: readonly number[]
  readonly off: readonly number[]
}

const GREEN_IN_REGULATION_SHARE = 0.45
const NEAREST_CHIP_METRES = 4
const FURTHEST_CHIP_METRES = 42
const MOST_STROKES = 12
/** Lengths of putts are written down as badly as is assumed: metres, and as a share; the larger counts. */
const LENGTH_SD = { metres: 0.15, share: 0.1 } as const

/**
 * Plays a hole from where its approach ended: strokes near the green by the true player's expected strokes from there, putts by
 * balls rolled over the green; and writes it down as well as a person can.
 */
export function nearGreenPlayer(
  truth: RecapHole,
  putt: (from: Point) => Point | null,
  normal: () => number,
  random: () => number,
): (logging: PuttLogging) => RoundHole {
  const { places, hole } = truth.model
  const groundAt = groundReader(hole)
  const short = shortGame(truth)
  const starts = startsOf()
  return (logging) => {
    const from = random() < GREEN_IN_REGULATION_SHARE ? starts.green : starts.off
    const place = from[Math.floor(random() * from.length)] as number
    let at = spotAt([places.x[place] as number, places.y[place] as number])
    const strokes: RoundStroke[] = [stroke(at)]
    while (at.lie !== 'green') {
      if (strokes.length > MOST_STROKES) return ended(strokes, 0, null, true)
      const end = short.play(at, 1, random)
      if (end === 'holed') return ended([...strokes, stroke(null)], 0, null)
      at = end === 'stays' ? at : end
      strokes.push(stroke(at))
    }
    const first = written(distance(at.point, hole.pin))
    let count = 0
    let ball: Point | null = at.point
    if (logging === 'each') strokes.push({ ...(strokes.pop() as RoundStroke), ...onGreen(first) })
    while (ball !== null && count < MOST_STROKES) {
      ball = putt(ball)
      count += 1
      if (logging === 'each')
        strokes.push(
          ball === null
            ? stroke(null)
            : { ...stroke(at), ...onGreen(written(distance(ball, hole.pin))), club: 'putter' },
        )
    }
    return logging === 'each' ? ended(strokes, 0, null) : ended(strokes, count, first)
  }

  function startsOf(): Starts {
    const [green, off]: [number[], number[]] = [[], []]
    for (let place = 0; place < places.count; place++) {
      const away = places.toPin[place] as number
      const lie = lieOfGround(groundOf(places, place))
      if (lie === 'green') green.push(place)
      else if (
        away > NEAREST_CHIP_METRES &&
        away < FURTHEST_CHIP_METRES &&
        lie !== null &&
        CHIPPED_FROM.includes(lie) &&
        groundAt([places.x[place] as number, places.y[place] as number]) === groundOf(places, place)
      )
        off.push(place)
    }
    return { green, off }
  }

  function spotAt(point: Point): Spot {
    const ground = groundAt(point)
    return { point, ground, lie: lieOfGround(ground) ?? 'rough' }
  }

  /** Off the green a place tapped on a picture; on it too, but for the letters of {@link onGreen}. */
  function stroke(to: Spot | null): RoundStroke {
    const finish = to && {
      x: to.point[0] + FINISH_SD_METRES * normal() * Number(to.lie !== 'green'),
      y: to.point[1] + FINISH_SD_METRES * normal() * Number(to.lie !== 'green'),
    }
    return {
      ...{ club: null, aimOffsetMetres: null, from: null, penalty: 0, isAsPlanned: true, place: 'study' },
      finish,
      lie: to?.lie ?? null,
    }
  }

  function written(metres: number): number {
    const sd = Math.max(LENGTH_SD.metres, LENGTH_SD.share * metres)
    return Math.max(0.05, metres + sd * normal())
  }

  function ended(
    strokes: readonly RoundStroke[],
    putts: number,
    firstPuttMetres: number | null,
    isPickedUp = false,
  ): RoundHole {
    return { ref: hole.ref, strokes, putts, firstPuttMetres, isPickedUp, place: 'study' }
  }
}

const CHIPPED_FROM: readonly Lie[] = ['fairway', 'first-cut', 'rough', 'heavy', 'bunker']

function onGreen(leftMetres: number): Pick<RoundStroke, 'finish' | 'lie'> {
  const letter: FinishLetter = 'g'
  return { finish: { letter, leftMetres }, lie: 'green' }
}
