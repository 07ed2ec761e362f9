import type { Point } from './point.ts'

/** A height over the plane, smooth enough that its rise has no jumps; metres. */
export interface HeightSurface {
  heightAt(x: number, y: number): number
  /** Rise per metre towards +x and towards +y. */
  gradientAt(x: number, y: number): Point
}
