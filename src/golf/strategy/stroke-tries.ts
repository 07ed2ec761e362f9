import { stanceEffect } from '#golf/player/stance.ts'
import type { Situation, StrokeQuestion } from './evaluate-stroke.ts'
import { centreToday, type HoleModel } from './hole-model.ts'
import { isLow, type Shot } from './shots.ts'
import { isOnHole } from './states.ts'
import { strokeLines } from './stroke-lines.ts'

/** Every shot from one place with the lines on which it stays on the hole; low ones where trees are in the way. */
export function strokeTries(
  model: HoleModel,
  shots: readonly Shot[],
  situation: Situation,
  stepDegrees: number,
): StrokeQuestion['tries'] {
  const { headings, isHampered } = strokeLines(model, situation, stepDegrees)
  return shots
    .filter((shot) => isHampered || !isLow(shot))
    .map((shot) => ({
      shot,
      headings: headings.filter((line) => isTriedAlong(model, situation, shot, line)),
    }))
}

/** Whether a shot stays on the hole along a line, radians. */
export function isTriedAlong(
  model: HoleModel,
  { x, y, stance }: Situation,
  shot: Shot,
  line: number,
): boolean {
  const { heading, total } = centreToday(model, shot, line)
  const turn = stance ? stanceEffect(stance, shot.loftDegrees, model.player.hand).turn : 0
  return isOnHole(model, x, y, heading + turn, total)
}
