import type { Hole } from '#golf/course/hole.ts'
import type { GroupShape } from '../drawing.ts'
import type { Sheet } from '../sheet.ts'
import { rectangleSteps } from '../steps.ts'
import { contourGreen } from './contour-green.ts'
import type { GroundMap } from './ground-map.ts'
import { hatchOut } from './hatch-out.ts'
import { letterPenalty } from './letter-penalty.ts'
import { outlineGround } from './outline-ground.ts'
import { plantTrees, tuftScrub } from './plant-trees.ts'
import { stippleSand } from './stipple-sand.ts'
import { strokeGrass } from './stroke-grass.ts'
import { waveWater } from './wave-water.ts'

/** All ground of a hole told by pattern, cut to the frame: edges first, then what stands on the ground. */
export function drawGround(hole: Hole, map: GroundMap, sheet: Sheet, hasFallArrow = true): GroupShape {
  const { left, top, right, bottom } = sheet.frame
  return {
    kind: 'group',
    name: 'ground',
    clip: rectangleSteps(left, top, right - left, bottom - top),
    shapes: [
      ...outlineGround(hole.areas, sheet),
      ...hatchOut(map),
      ...strokeGrass(map, sheet, hole.line),
      ...waveWater(map),
      ...stippleSand(map),
      ...contourGreen(hole, sheet, hasFallArrow),
      ...letterPenalty(hole.areas, map, sheet),
      ...tuftScrub(map),
      ...plantTrees(map, sheet, hole.trees),
    ],
  }
}
