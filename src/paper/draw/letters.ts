import type { Face } from './drawing.ts'

/** How wide a line of text stands in a face at a size, in drawing units: what a layout needs of the fonts, and no more. */
export type Letters = (text: string, face: Face, size: number) => number
