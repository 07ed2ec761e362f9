import { groundReader } from '#golf/course/ground-at.ts'
import type { Player, Putting } from '#golf/player/player.ts'
import { puttingDistance } from '#golf/player/putting-distance.ts'
import { puttingValues } from '#golf/player/putting-values.ts'
import type { Spot } from '#golf/round/follow-hole.ts'
import type { RecapHole } from '#golf/round/judge-choice.ts'
import { lieOfGround } from '#golf/strategy/lie-of-ground.ts'
import { nearGreenValue } from '#golf/strategy/near-green-value.ts'

const ANGLES = 8
const RINGS = 8
const LONGEST_LEAVE_METRES = 12

/**
 * How a short stroke ends: which share goes in, which stays where it was, and how far the others come to rest from the hole:
 * one of two scales, so that few places are met, times an exponential number.
 */
interface ShortStroke {
  readonly holed: number
  readonly stays: number
  /** Number of the smaller scale, and the share of balls that take the next. */
  readonly scale: number
  readonly next: number
}

/**
 * Strokes near the green of a simulated player whose expected strokes to hole out are the profile's times a factor:
 * rests lie about the hole at distances with an exponential distribution, as far as makes the mean right.
 */
export function shortGame({ model, values }: RecapHole): {
  readonly play: (from: Spot, factor: number, random: () => number) => Spot | 'stays' | 'holed'
  readonly value: (spot: Spot) => number
} {
  const groundOf = groundReader(model.hole)
  const [pinX, pinY] = model.hole.pin
  const kept = new Map<string, ShortStroke>()
  const spotAt = (metres: number, angle: number): Spot => {
    const point = [pinX + metres * Math.cos(angle), pinY + metres * Math.sin(angle)] as const
    const ground = groundOf(point)
    const lie = lieOfGround(ground)
    return lie === null ? { point, lie: 'rough', ground: 'rough' } : { point, lie, ground }
  }
  const value = ({ point, ground, lie }: Spot): number => nearGreenValue(model, values, point, ground, lie)
  const meanAfter = (scale: number): number => {
    let sum = 0
    for (let ring = 0; ring < RINGS; ring++)
      for (let angle = 0; angle < ANGLES; angle++)
        sum += value(spotAt(-scale * Math.log(1 - (ring + 0.5) / RINGS), angleOf(angle)))
    return sum / (RINGS * ANGLES)
  }
  const means = Array.from({ length: SCALES }, (_, index) => meanAfter(scaleOf(index)))
  const strokeOf = (worth: number): ShortStroke => {
    const wanted = worth - 1
    const least = means[0] as number
    if (wanted < least) return { holed: 1 - wanted / least, stays: 0, scale: 0, next: 0 }
    const above = means.findIndex((mean) => mean >= wanted)
    // A stroke that stays is played again and is worth as much: 1 + (1 − s) m + s v = v.
    if (above < 0) {
      const most = means.at(-1) as number
      return { holed: 0, stays: (worth - 1 - most) / (worth - most), scale: SCALES - 1, next: 0 }
    }
    const [low, high] = [means[Math.max(0, above - 1)] as number, means[above] as number]
    const next = high > low ? (wanted - low) / (high - low) : 0
    return { holed: 0, stays: 0, scale: Math.max(0, above - 1), next }
  }
  return {
    value,
    play(from, factor, random) {
      const key = `${from.point[0]} ${from.point[1]} ${from.lie} ${factor}`
      const stroke = kept.get(key) ?? strokeOf(factor * value(from))
      kept.set(key, stroke)
      const drawn = random()
      if (drawn < stroke.holed) return 'holed'
      if (drawn < stroke.holed + stroke.stays) return 'stays'
      const ring = Math.floor(RINGS * random())
      const scale = scaleOf(stroke.scale + (random() < stroke.next ? 1 : 0))
      return spotAt(-scale * Math.log(1 - (ring + 0.5) / RINGS), angleOf(Math.floor(ANGLES * random())))
    },
  }
}

const SCALES = 60
function scaleOf(index: number): number {
  return LONGEST_LEAVE_METRES * ((index + 0.5) / (SCALES - 0.5)) ** 1.5
}
function angleOf(index: number): number {
  return (2 * Math.PI * (index + 0.5)) / ANGLES
}

/**
 * Putts of a simulated player from a place where the profile expects so many: their own putting from the distance on a flat
 * green that is worth as much.
 */
export function puttsFrom(worth: number, profile: Player, own: Putting, random: () => number): number {
  const far = puttingDistance(profile, worth)
  const theirs = puttingValues({ putting: own })
  const [one, two, three] = theirs.shares(far)
  const fourth = Math.max(0, theirs.expected(far) - one - 2 * two - 3 * three)
  const drawn = random()
  if (drawn < one) return 1
  if (drawn < one + two) return 2
  return random() < fourth / Math.max(three, 1e-12) ? 4 : 3
}
