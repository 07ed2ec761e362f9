import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { approachHole } from '#golf/course/approach-hole.ts'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import type { Hole } from '#golf/course/hole.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import { area, box, disc, inventedHole } from '#golf/strategy/invented-hole.fixture.ts'
import type { Point, Polygon } from '#numbers/geometry/point.ts'
import { polygonBounds } from '#numbers/geometry/polygon.ts'
import { readSource } from '#outside/formats/read-source.ts'
import { readPart } from '#outside/print/read-part.ts'
import { renderPdf } from '#outside/print/render-pdf.ts'
import { printedLetters } from '#outside/print/type-setter.ts'
import { bookPages } from '#paper/book/book-pages.ts'
import { checkPages, greenScale } from '#paper/book/check-pages.ts'
import { imposeBook, stapledPairs } from '#paper/book/impose.ts'
import { inventedFacts, inventedHoles } from '#paper/book/invented-book.fixture.ts'
import { outside, overlaps, textBoxes } from '#paper/book/text-boxes.fixture.ts'
import { drawSurvey } from '#paper/draw/draw-hole.ts'
import type { Shape } from '#paper/draw/drawing.ts'
import { layOutSheet } from '#paper/draw/sheet.ts'
import { canReadPdf, fontsOf, longestRun, pictureOf } from './printed-pages.ts'

// The pocket book as a printer and a reader see it. Limits: Clarification 4.3a/1 of the Rules of Golf 2023.

const letters = printedLetters(readPart)
const NAME = 'Wolfeschlegelsteinhausenberger'
const HAZARDS = Array.from({ length: 14 }, (_, index) => {
  const side = index % 2 === 0 ? -22 : 22
  return area('bunker', disc([side, 60 + index * 16], 5), `bunker-${index}`)
})
const deep: Polygon = [disc([0, 330], 1)[0]?.map(([x, y]): Point => [x * 16, 330 + (y - 330) * 27.43]) ?? []]
const HOLES: readonly Partial<Hole>[] = [
  { ...inventedHole(330, HAZARDS), name: NAME },
  { ...inventedHole(330), green: deep, areas: [area('green', deep, 'green')] },
  inventedHole(640),
  dogleg(110),
]

/** A hole that turns right by so many degrees after 200 m. */
function dogleg(degrees: number): Hole {
  const turn = (degrees * Math.PI) / 180
  const pin: Point = [150 * Math.sin(turn), 200 + 150 * Math.cos(turn)]
  const green = disc(pin, 11.3)
  return {
    ...inventedHole(350),
    line: [[0, 0], [0, 200], pin],
    pin,
    green,
    areas: [area('fairway', box(-15, 15, 100, 215), 'fairway'), area('green', green, 'green')],
  }
}

const facts = inventedFacts(
  letters,
  inventedHoles(HOLES.length).map((one, index) => {
    const hole = { ...one.hole, ...HOLES[index], ref: String(index + 1) }
    return { ...one, hole }
  }),
  { purpose: 'counting', playerName: NAME },
)
const pages = bookPages(facts, 480)
/** As large as the chart of a pocket page, points. */
const CHART = { width: 230, height: 360 }

describe('the pocket book', () => {
  it('has pages of the legal size, nothing cut and no words on others', () => {
    expect(pages).toHaveLength(3 + 2 * HOLES.length)
    expect(checkPages(pages, 'counting', [])).toEqual([])
    for (const { drawing } of pages) {
      expect([drawing.width, drawing.height]).toEqual([4.25 * 72, 7 * 72])
      const words = { ...drawing, shapes: drawing.shapes.filter(({ kind }) => kind === 'text') }
      expect(overlaps(textBoxes(words, letters))).toEqual([])
      expect(outside(drawing, textBoxes(drawing, letters))).toEqual([])
    }
  })

  it('writes no figure over a bunker: the line’s go to its other side or are left out', () => {
    const [hole, sheet] = [facts.holes[0]?.hole as Hole, layOutSheet(facts.holes[0]?.hole as Hole, CHART)]
    const { ground } = drawSurvey(hole, sheet, { ...CHART, measures: measureHole(hole) })
    const bunkers = HAZARDS.map(({ polygon }) => (polygon[0] ?? []).map(sheet.toSheet)).map((ring) => ({
      ...{ left: Math.min(...ring.map(([x]) => x)), right: Math.max(...ring.map(([x]) => x)) },
      ...{ top: Math.min(...ring.map(([, y]) => y)), bottom: Math.max(...ring.map(([, y]) => y)) },
    }))
    const figures = textBoxes(
      { width: sheet.width, height: sheet.height, title: '', description: '', shapes: ground },
      letters,
    )
    expect(figures.filter(({ text }) => /^\d+$/.test(text)).length).toBeGreaterThan(2)
    const hidden = figures.flatMap(({ text, ...box }) =>
      bunkers.some(
        ({ left, right, top, bottom }) =>
          box.left < right && left < box.right && box.top < bottom && top < box.bottom,
      )
        ? [text]
        : [],
    )
    expect(hidden).toEqual([])
  })

  it('writes the scale that a green has, 1:480 or smaller where it does not fit', () => {
    const scales = pages.flatMap((page) =>
      page.greens.map((green) => [page, greenScale(page, green)] as const),
    )
    expect(scales).toHaveLength(HOLES.length)
    for (const [{ drawing }, scale] of scales) {
      const said = textBoxes(drawing, letters).find(({ text }) => text.startsWith('Green 1:'))
      expect(Number(/1:(\d+)/.exec(said?.text ?? '')?.[1])).toBeCloseTo(scale, 3)
      expect(scale).toBeGreaterThanOrEqual(480 * (1 - 1e-9))
    }
  })

  it('is refused with larger greens, and draws slopes only for practice', () => {
    const [fault] = checkPages(bookPages(facts, 240), 'counting', [])
    expect(fault).toMatchObject({ code: 'MAR-BOOK-004' })
    const sloped = facts.holes.map((one) => ({ ...one, hole: { ...one.hole, greenFallPercent: 3 } }))
    const carried = bookPages({ ...facts, holes: sloped }, 480)
    expect(checkPages(carried, 'counting', [])).toEqual([])
    const practice = bookPages({ ...facts, holes: sloped, purpose: 'practice' }, 480)
    expect(checkPages(practice, 'counting', [])[0]).toMatchObject({ code: 'MAR-BOOK-003' })
    expect(checkPages(pages, 'counting', ['G-11'])[0]).toMatchObject({ code: 'MAR-BOOK-001' })
  })

  it('folds so that every leaf carries pages that follow each other', () => {
    for (const count of [4, 7, 12, 39]) {
      const pairs = stapledPairs(count)
      const whole = 4 * Math.ceil(count / 4)
      expect(pairs.flat().sort((a, b) => a - b)).toEqual(Array.from({ length: whole }, (_, index) => index))
      for (const [a, b] of pairs) expect(a + b).toBe(whole - 1)
      for (let leaf = 0; leaf < pairs.length; leaf += 2) {
        // Behind the right page of the outside lies the left page of the inside.
        expect(pairs[leaf + 1]?.[0]).toBe((pairs[leaf]?.[1] ?? 0) + 1)
      }
    }
  })
})

describe.skipIf(!canReadPdf)('the pocket book as PDF', () => {
  it('has greens that measure what their scale says, to 0.2 mm at 600 dots to the inch', async () => {
    const index = pages.findIndex(({ name }) => name === 'green 3')
    const page = pages[index]
    if (page === undefined) throw new Error('no green')
    // The green alone on its page, so that every dot of ink is its edge.
    const shapes = page.drawing.shapes.filter((shape) => shape.kind === 'group' && shape.name === 'green')
    const pdf = await renderPdf([{ ...page.drawing, shapes }], { title: 'Green', readPart })
    const picture = pictureOf(pdf, 1, 600)
    const columns = Array.from({ length: picture.width }, (_, x) => x).filter((x) =>
      Array.from({ length: picture.height }, (_, y) => y).some((y) => picture.isDark(x, y)),
    )
    // A disc of 40 corners and radius 11.3 m, corners half a step aside; its line is 0.7 points wide.
    const across = 2 * 11.3 * Math.cos(Math.PI / 40) * 1000
    const line = (0.7 * 25.4) / 72
    const measured = (((columns.at(-1) ?? 0) - (columns[0] ?? 0) + 1) / 600) * 25.4 - line
    expect(Math.abs(measured - across / 480)).toBeLessThan(0.2)
  })

  it('has the greens and the rulers of the example course right to 0.2 mm at 600 dots to the inch', async () => {
    const source = readSource(
      readFileSync('examples/sandrel-ness.course.geojson'),
      'sandrel-ness.course.geojson',
    )
    const hole = holeFromCourse(assembleCourse(source.features, {}).course, '7')
    const asked = inventedFacts(letters, [{ hole, plan: null, missing: '', received: null }], {
      purpose: 'counting',
    })
    const page = bookPages(asked, 480).find(({ name }) => name === 'green 7')
    if (page === undefined) throw new Error('no green')
    const [printed] = imposeBook([page], 'a4', false)
    if (printed === undefined) throw new Error('no sheet')
    const { drawing: sheet } = printed
    // The green alone, and the rulers, each where they stand on the sheet.
    const isKept = (shape: Shape): boolean =>
      shape.kind === 'group' &&
      (shape.name === 'green' || shape.name === 'rulers' || shape.shapes.some(isKept))
    const kept = (shapes: readonly Shape[]): Shape[] =>
      shapes.flatMap((shape) =>
        shape.kind !== 'group' || !isKept(shape)
          ? []
          : shape.name === 'green' || shape.name === 'rulers'
            ? [shape]
            : [{ ...shape, shapes: kept(shape.shapes) }],
      )
    const pdf = await renderPdf([{ ...sheet, shapes: kept(sheet.shapes) }], { title: 'Sheet', readPart })
    const above = pictureOf(pdf, 1, 600, { left: sheet.width / 2, top: 60, width: 306, height: 480 })
    const millimetres = (dots: number): number => (dots / 600) * 25.4
    const line = (0.7 * 25.4) / 72
    const spread = (count: number, isInk: (at: number) => boolean): number => {
      const inked = Array.from({ length: count }, (_, at) => at).filter(isInk)
      return millimetres((inked.at(-1) ?? 0) - (inked[0] ?? 0) + 1) - line
    }
    const across = (y: number): boolean =>
      Array.from({ length: above.width }, (_, x) => x).some((x) => above.isDark(x, y))
    const down = (x: number): boolean =>
      Array.from({ length: above.height }, (_, y) => y).some((y) => above.isDark(x, y))
    // The green as surveyed, turned as the player comes to it: independent of what was drawn.
    const { minX, maxX, minY, maxY } = polygonBounds(approachHole(hole).green ?? [])
    expect(Math.abs(spread(above.width, down) - (1000 * (maxX - minX)) / 480)).toBeLessThan(0.2)
    expect(Math.abs(spread(above.height, across) - (1000 * (maxY - minY)) / 480)).toBeLessThan(0.2)
    const below = pictureOf(pdf, 1, 600, { left: 100, top: 540, width: 200, height: 50 })
    const longest = Math.max(
      ...Array.from({ length: below.height }, (_, y) => longestRun(below.width, (x) => below.isDark(x, y))),
    )
    expect(Math.abs(millimetres(longest) - 50.8)).toBeLessThan(0.2)
  })

  it('reads back page by page from each half of the folded sheets, fonts embedded, the same to the byte', async () => {
    const sheets = imposeBook(pages, 'letter', true).map(({ drawing }) => drawing)
    const pdf = await renderPdf(sheets, { title: 'Book', readPart })
    expect(Buffer.compare(pdf, await renderPdf(sheets, { title: 'Book', readPart }))).toBe(0)
    for (const font of fontsOf(pdf)) expect(font).toMatchObject({ isEmbedded: true, isSubset: true })
    const folder = mkdtempSync(join(tmpdir(), 'marram-fold-'))
    const path = join(folder, 'book.pdf')
    writeFileSync(path, pdf)
    const read = stapledPairs(pages.length).flatMap((pair, sheet) =>
      pair.map((index, half) => {
        const crop = ['-x', String(396 - 306 * (1 - half)), '-y', '40', '-W', '306', '-H', '508']
        const where = ['-f', String(sheet + 1), '-l', String(sheet + 1), ...crop]
        return [index, execFileSync('pdftotext', [...where, path, '-'], { encoding: 'utf8' })] as const
      }),
    )
    rmSync(folder, { recursive: true })
    const half = new Map(read.map(([index, words]) => [index, words.replaceAll(/\s+/g, ' ')]))
    expect(half.get(0)).toContain(NAME)
    for (const [index, { name }] of pages.entries()) {
      if (name.startsWith('green')) expect(half.get(index)).toContain('Then 152 to the back: 7-iron')
      if (name.startsWith('hole')) expect(half.get(index)).toContain('Scale 1:')
      if (name === 'relief') expect(half.get(index)).toContain('Unplayable')
    }
    expect(half.get(pages.length)?.trim() ?? '').toBe('')
  })
})
