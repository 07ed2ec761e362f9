import type { Point } from '#numbers/geometry/point.ts'
import { degreesToRadians } from '#numbers/units/units.ts'
import type { Hole } from './hole.ts'

/** The shape of a green and its apron in the hole frame. */
export interface GreenSurface {
  /** What the shape was taken from. */
  readonly source: 'level' | 'mean-fall'
  /** Rise of the ground per metre towards +x and towards +y at a place. */
  gradientAt(x: number, y: number): Point
  /** Height above the pin, metres. */
  heightAt(x: number, y: number): number
}

/** The surface of a hole's green: a plane with the surveyed mean fall, level where none was surveyed. */
export function greenSurface(
  hole: Pick<Hole, 'pin' | 'greenFallPercent' | 'greenFallTowardDegrees'>,
): GreenSurface {
  const rise = hole.greenFallPercent / 100
  const toward = degreesToRadians(hole.greenFallTowardDegrees)
  const gradient: Point = [-rise * Math.sin(toward), -rise * Math.cos(toward)]
  const [pinX, pinY] = hole.pin
  return {
    source: rise === 0 ? 'level' : 'mean-fall',
    gradientAt: () => gradient,
    heightAt: (x, y) => (x - pinX) * gradient[0] + (y - pinY) * gradient[1],
  }
}
