import { measureHole } from '#golf/course/measure-hole.ts'
import { drawHole } from '#paper/draw/draw-hole.ts'
import type { Drawing } from '#paper/draw/drawing.ts'
import { everyGround, inventedPattern, overWater } from './invented-holes.ts'

/** Every picture under test, by the name of its file: one function a picture. */
export const PICTURES: Readonly<Record<string, () => Drawing>> = {
  'every-ground': () => drawHole(everyGround(), { courseName: 'Invented', units: 'metres', width: 400, height: 560 }),
  'pattern-and-aim': () => {
    const hole = everyGround()
    return drawHole(hole, {
      width: 480,
      height: 680,
      courseName: 'Invented',
      playerName: 'A. Player',
      measures: measureHole(hole),
      pattern: inventedPattern('5-wood', 180, -1.5),
      aim: { from: [0, 0], headingDegrees: -1.5, atMetres: 180, startDegrees: 1.5 },
      arcs: [
        { club: 'driver', carryMetres: 195 },
        { club: '5-wood', carryMetres: 163 },
      ],
      wind: { speedMetresPerSecond: 5, fromDegrees: 250, label: '5 m/s' },
      credit: 'Invented ground.',
    })
  },
  'over-water': () =>
    drawHole(overWater(), {
      width: 390,
      height: 520,
      measures: measureHole(overWater()),
      wind: { speedMetresPerSecond: 0, fromDegrees: 0, label: 'calm' },
    }),
}
