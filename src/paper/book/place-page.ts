import type { Point } from '#numbers/geometry/point.ts'
import type { Shape, Step } from '../draw/drawing.ts'

/** The same shapes further right and down by so much: a page on its sheet. */
export function placeShapes(shapes: readonly Shape[], by: Point): Shape[] {
  return shapes.map((shape) => placeShape(shape, by))
}

function placeShape(shape: Shape, by: Point): Shape {
  const at = ([x, y]: Point): Point => [x + by[0], y + by[1]]
  switch (shape.kind) {
    case 'path':
      return { ...shape, steps: shape.steps.map((step) => placeStep(step, by)) }
    case 'dots':
      return { ...shape, points: shape.points.map(at) }
    case 'text':
      return { ...shape, at: at(shape.at) }
    case 'group': {
      const { clip } = shape
      return {
        ...shape,
        shapes: placeShapes(shape.shapes, by),
        ...(clip === undefined ? {} : { clip: clip.map((step) => placeStep(step, by)) }),
      }
    }
  }
}

function placeStep(step: Step, [dx, dy]: Point): Step {
  switch (step[0]) {
    case 'Z':
      return step
    case 'C':
      return ['C', step[1] + dx, step[2] + dy, step[3] + dx, step[4] + dy, step[5] + dx, step[6] + dy]
    default:
      return [step[0], step[1] + dx, step[2] + dy]
  }
}
