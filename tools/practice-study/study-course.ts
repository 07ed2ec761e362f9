import { assembleCourse } from '../../src/golf/course/assemble-course.ts'
import type { Hole } from '../../src/golf/course/hole.ts'
import { holeFromCourse } from '../../src/golf/course/hole-from-course.ts'
import { parseHoleTable } from '../../src/outside/formats/hole-table.ts'

/** A par 3 between sand and a par 4 with water, sand and a boundary: no trees, whose ways the simulator does not follow. */
const TABLE = `hole,what,side,from_m,to_m,near_m,far_m,note
1,bunker,left,128,146,13,22,
1,bunker,right,134,152,13,22,
1,heavy,left,0,300,28,60,
1,heavy,right,0,300,28,60,
1,green,,129,153,0,24,par 3
2,fairway,across,40,345,-15,15,
2,water-red,right,160,240,22,45,
2,bunker,left,180,200,14,22,
2,bunker,left,334,352,13,22,
2,heavy,right,0,420,30,45,
2,heavy,left,0,420,30,60,
2,out,right,0,500,45,100,
2,green,,346,370,0,24,par 4`

/** The short course of the study: two invented holes, level and calm. */
export function studyHoles(): readonly Hole[] {
  const reading = parseHoleTable(TABLE, 'study')
  const { course } = assembleCourse(reading.features, reading)
  return course.holes.map(({ ref }) => holeFromCourse(course, ref, {}))
}
