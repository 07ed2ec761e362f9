import type { Course } from '#golf/course/course.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Relief } from '#golf/strategy/relief.ts'
import { drawRelief } from '#paper/draw/draw-relief.ts'
import { renderSvg } from '#paper/draw/render-svg.ts'
import { plainText } from './plain-text.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'

/** What the Rules give one ball as a chart of the hole, as the text of an SVG file. */
export function reliefPicture(asked: {
  readonly course: Course
  readonly hole: Hole
  readonly relief: Relief
  readonly units: ReaderUnits
}): string {
  const { course, hole, relief, units } = asked
  const drawing = drawRelief(hole, relief, {
    units,
    courseName: course.name,
    ...(course.credit === null ? {} : { credit: course.credit }),
  })
  // XML has no place for control characters, and a name from a file may hold some.
  return plainText(renderSvg(drawing), false)
}
