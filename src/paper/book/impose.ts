import type { Shape, Step } from '../draw/drawing.ts'
import type { Page, PrintedSheet } from './page.ts'
import { placeShapes } from './place-page.ts'
import { rulers } from './rulers.ts'
import { PAPERS, type Paper, RULE, TYPE } from './settings.ts'
import { text } from './text.ts'

/**
 * Pages in pairs on sheets on their side, with crop marks and rulers that prove the scale: left and right as they are read,
 * or folded and stapled through the back, for which blank pages make the number a multiple of four.
 */
export function imposeBook(pages: readonly Page[], paper: Paper, isStapled: boolean): PrintedSheet[] {
  const { width: height, height: width } = PAPERS[paper]
  const pairs = isStapled ? stapledPairs(pages.length) : readPairs(pages.length)
  return pairs.map((pair, sheet): PrintedSheet => {
    const [page] = pages
    const [pageWidth, pageHeight] = [page?.drawing.width ?? 0, page?.drawing.height ?? 0]
    const [left, top] = [width / 2 - pageWidth, (height - pageHeight) / 2 - 8]
    // A stapled sheet of paper has two printed sides.
    const words = isStapled
      ? `Sheet ${Math.floor(sheet / 2) + 1} of ${pairs.length / 2}, ${sheet % 2 === 0 ? 'outside' : 'inside'}, turn on the short edge`
      : `Sheet ${sheet + 1} of ${pairs.length}`
    const drawing = {
      width,
      height,
      title: words,
      description: pair.map((index) => pages[index]?.name ?? 'blank').join(', '),
      shapes: [
        ...pair.flatMap((index, place) => {
          const one = pages[index]
          return one === undefined ? [] : placeShapes(one.drawing.shapes, [left + place * pageWidth, top])
        }),
        cropMarks(left, top, pageWidth, pageHeight),
        rulers([left + 4, top + pageHeight + 22]),
        text(
          `${words}. Print at full size, not fitted to the page.`,
          [left + 2 * pageWidth - 4, top + pageHeight + 22],
          TYPE.small,
          'sans',
          'end',
        ),
      ],
    }
    const rows = pair.flatMap((index, place) =>
      (pages[index]?.rows ?? []).map((row) => ({
        ...row,
        left: row.left + left + place * pageWidth,
        top: row.top + top,
      })),
    )
    return { drawing, rows }
  })
}

/** 0-based pages side by side as a reader opens them: the cover stands alone on the right. */
function readPairs(count: number): [number, number][] {
  return Array.from({ length: Math.ceil((count + 1) / 2) }, (_, index) => [2 * index - 1, 2 * index])
}

/** Both sides of each sheet from the outside in: the last page beside the first, then the second beside the last but one. */
export function stapledPairs(count: number): [number, number][] {
  const whole = 4 * Math.ceil(count / 4)
  return Array.from({ length: whole / 2 }, (_, side): [number, number] =>
    side % 2 === 0 ? [whole - 1 - side, side] : [side, whole - 1 - side],
  )
}

const MARK = 14
const GAP = 4

/** Short lines outside the corners of both pages and at the fold between them. */
function cropMarks(left: number, top: number, pageWidth: number, pageHeight: number): Shape {
  const bottom = top + pageHeight
  const steps = [left, left + pageWidth, left + 2 * pageWidth].flatMap((x): Step[] => [
    ['M', x, top - GAP - MARK],
    ['L', x, top - GAP],
    ['M', x, bottom + GAP],
    ['L', x, bottom + GAP + MARK / 2],
  ])
  const across = [top, bottom].flatMap((y): Step[] => [
    ['M', left - GAP - MARK, y],
    ['L', left - GAP, y],
    ['M', left + 2 * pageWidth + GAP, y],
    ['L', left + 2 * pageWidth + GAP + MARK, y],
  ])
  return { kind: 'path', steps: [...steps, ...across], stroke: { paint: 'ink', width: RULE.fine } }
}
