import { stanceEffect } from '#golf/player/stance.ts'
import type { Situation, StrokeQuestion } from './evaluate-stroke.ts'
import { centreToday, type HoleModel } from './hole-model.ts'
import type { Shot } from './shots.ts'
import { isOnHole } from './states.ts'
import { strokeLines } from './stroke-lines.ts'

/** Every shot from one place with the lines on which it stays on the hole. */
export function strokeTries(
  model: HoleModel,
  shots: readonly Shot[],
  { x, y, stance }: Situation,
  stepDegrees: number,
): StrokeQuestion['tries'] {
  const lines = strokeLines(model, x, y, stepDegrees)
  return shots.map((shot) => ({
    shot,
    headings: lines.filter((line) => {
      const { heading, total } = centreToday(model, shot, line)
      const turn = stance ? stanceEffect(stance, shot.loftDegrees, model.player.hand).turn : 0
      return isOnHole(model, x, y, heading + turn, total)
    }),
  }))
}
