// By its parts: through its front door the whole library comes along, of which a third is never called here.
import { ClipType, FillRule, type Paths64, PathType } from 'clipper2-ts/dist/Core.js'
import { Clipper64, type PolyPath64, PolyTree64 } from 'clipper2-ts/dist/Engine.js'
import { ClipperOffset, EndType, JoinType } from 'clipper2-ts/dist/Offset.js'
import type { Polygon, Ring } from '../point.ts'

/** What to keep of two sets of areas. */
export type Combination = 'either' | 'both' | 'first-only'

// The clipping library counts in whole numbers; one of them is this many to the metre (a micrometre). Over
// 10 km that leaves five spare digits in a double.
const UNITS_PER_METRE = 1e6
// How far the short chords of a rounded corner may lie inside the true arc, metres. Our assumption: well under
// anything surveyed on a course.
const ARC_TOLERANCE = 0.002

const CLIP_TYPES = {
  either: ClipType.Union,
  both: ClipType.Intersection,
  'first-only': ClipType.Difference,
} as const

/** The areas left when two sets are combined, outlines anticlockwise and their holes clockwise; in no order. */
export function combinedAreas(
  kind: Combination,
  first: readonly Polygon[],
  second: readonly Polygon[],
): Polygon[] {
  return fromPaths(CLIP_TYPES[kind], toPaths(first), toPaths(second))
}

/** The areas grown (or, below 0, shrunk) by `metres` all round, with round corners. */
export function offsetAreas(areas: readonly Polygon[], metres: number): Polygon[] {
  const offset = new ClipperOffset(2, ARC_TOLERANCE * UNITS_PER_METRE)
  offset.addPaths(toPaths(areas), JoinType.Round, EndType.Polygon)
  // By way of plain paths: asked for a tree, the library returns nothing at all for a distance of 0.
  const paths: Paths64 = []
  offset.execute(metres * UNITS_PER_METRE, paths)
  return fromPaths(ClipType.Union, paths, [])
}

// Each polygon is first reduced to clean, consistently turned rings by the even-odd rule, so that overlapping
// polygons of one set add up instead of cancelling out.
function toPaths(polygons: readonly Polygon[]): Paths64 {
  return polygons.flatMap((polygon) => {
    const rings = polygon.map((ring) =>
      ring.map(([x, y]) => ({ x: Math.round(x * UNITS_PER_METRE), y: Math.round(y * UNITS_PER_METRE) })),
    )
    const union: Paths64 = []
    clipperOf(rings, []).execute(ClipType.Union, FillRule.EvenOdd, union)
    return union
  })
}

function fromPaths(type: ClipType, first: Paths64, second: Paths64): Polygon[] {
  const tree = new PolyTree64()
  clipperOf(first, second).execute(type, FillRule.NonZero, tree)
  return fromTree(tree)
}

function clipperOf(first: Paths64, second: Paths64): Clipper64 {
  const clipper = new Clipper64()
  clipper.addPaths(first, PathType.Subject)
  clipper.addPaths(second, PathType.Clip)
  return clipper
}

// The tree alternates: outlines, their holes, islands in those holes, and so on.
function fromTree(tree: PolyPath64): Polygon[] {
  const polygons: Polygon[] = []
  for (const outline of childrenOf(tree)) {
    const holes = childrenOf(outline)
    polygons.push([outline, ...holes].map(toRing))
    for (const hole of holes) polygons.push(...fromTree(hole))
  }
  return polygons
}

function childrenOf(node: PolyPath64): PolyPath64[] {
  return Array.from({ length: node.count }, (_, index) => node.child(index))
}

function toRing(node: PolyPath64): Ring {
  // Adding 0 turns −0 into 0.
  return (node.poly ?? []).map(({ x, y }) => [x / UNITS_PER_METRE + 0, y / UNITS_PER_METRE + 0] as const)
}
