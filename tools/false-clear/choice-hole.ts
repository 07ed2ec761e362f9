import { assembleCourse } from '../../src/golf/course/assemble-course.ts'
import type { Hole } from '../../src/golf/course/hole.ts'
import { holeFromCourse } from '../../src/golf/course/hole-from-course.ts'
import { parseHoleTable } from '../../src/outside/formats/hole-table.ts'

/**
 * A short hole of our own on which the longest club is a choice: a red pond on the right lies where it comes down, and
 * out of reach of the others. So many metres from the line to the pond say how dear the long club is.
 */
export function choiceHole(pondOffsetMetres: number): Hole {
  const table = `hole,what,side,from_m,to_m,near_m,far_m,note
1,fairway,across,60,250,-14,14,
1,water-red,right,142,190,${pondOffsetMetres},40,
1,out,left,0,300,36,100,
1,out,right,0,300,40,100,
1,green,,251,273,0,22,par 4`
  const reading = parseHoleTable(table, 'study')
  return holeFromCourse(assembleCourse(reading.features, reading).course, '1', {})
}
