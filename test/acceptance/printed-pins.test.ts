import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { approachHole } from '#golf/course/approach-hole.ts'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { parseDay } from '#golf/course/parse-day.ts'
import { pinInPaces } from '#golf/course/pin-in-paces.ts'
import { readSource } from '#outside/formats/read-source.ts'
import { readPart } from '#outside/print/read-part.ts'
import { printedLetters } from '#outside/print/type-setter.ts'
import { checkPages, greenScale } from '#paper/book/check-pages.ts'
import { inventedFacts } from '#paper/book/invented-book.fixture.ts'
import { pinSheets } from '#paper/book/pin-sheet.ts'
import { outside, overlaps, textBoxes } from '#paper/book/text-boxes.fixture.ts'

// The pin sheet of the example course. Limits: Clarification 4.3a/1 of the Rules of Golf 2023.

const file = 'examples/sandrel-ness.course.geojson'
const { course } = assembleCourse(readSource(readFileSync(file), file).features, {})
const day = parseDay(readFileSync('examples/westerly.day.json', 'utf8'), 'day')
const holes = course.holes.map(({ ref }) => holeFromCourse(course, ref, { day }))
const letters = printedLetters(readPart)
const facts = inventedFacts(
  letters,
  holes.map((hole) => ({ hole, plan: null, missing: '', received: null })),
  { purpose: 'counting', day },
)

describe('the pin sheet', () => {
  it('says the paces of the day file, each from the nearer side', () => {
    expect(holes.length).toBe(18)
    for (const hole of holes) {
      const typed = day.pins[hole.ref]
      const said = pinInPaces(hole)
      expect(said?.onPaces).toBe(typed?.yPaces)
      if (said?.side === typed?.from) expect(said?.sidePaces).toBe(typed?.xPaces)
      else expect(said?.sidePaces).toBeLessThanOrEqual(typed?.xPaces ?? 0)
    }
  })

  it.each(['a4', 'letter'] as const)('may be carried, nothing cut and no words on others: %s', (paper) => {
    const pages = pinSheets({ ...facts, paper }, 480)
    expect(pages).toHaveLength(1)
    expect(checkPages(pages, 'counting', course.localRules)).toEqual([])
    for (const page of pages) {
      const words = { ...page.drawing, shapes: page.drawing.shapes.filter(({ kind }) => kind === 'text') }
      const boxes = textBoxes(words, letters)
      expect(overlaps(boxes)).toEqual([])
      expect(outside(page.drawing, boxes)).toEqual([])
      const said = Number(boxes.map(({ text }) => /Greens 1:(\d+)/.exec(text)?.[1]).find((one) => one))
      for (const green of page.greens) {
        // A turned green spans another box: its scale is measured on the sheet by the length of its outline.
        const turned = approachHole(holes.find(({ ref }) => ref === green.ref) as never)
        expect(greenScale(page, { ref: green.ref, outline: turned.green ?? [] })).toBeCloseTo(said, 3)
      }
      expect(said).toBeGreaterThanOrEqual(480)
    }
  })

  it('is refused with slopes, with fewer than nine greens, and where only an approved book may be carried', () => {
    const few = pinSheets({ ...facts, holes: facts.holes.slice(0, 8) }, 480)
    expect(checkPages(few, 'counting', [])).toMatchObject([{ code: 'MAR-BOOK-005' }])
    expect(checkPages(pinSheets(facts, 480), 'counting', ['G-11'])).toMatchObject([{ code: 'MAR-BOOK-001' }])
    const sloped = facts.holes.map((one) => ({ ...one, hole: { ...one.hole, greenFallPercent: 3 } }))
    const practice = pinSheets({ ...facts, holes: sloped, purpose: 'practice' }, 480)
    expect(checkPages(practice, 'counting', [])[0]).toMatchObject({ code: 'MAR-BOOK-003' })
    expect(checkPages(pinSheets({ ...facts, holes: sloped }, 480), 'counting', [])).toEqual([])
  })

  it('says which holes nobody gave a place for, and draws none there', () => {
    const words = (pins: typeof day.pins): string =>
      pinSheets({ ...facts, day: { ...day, pins } }, 480)
        .flatMap(({ drawing }) => textBoxes(drawing, letters).map(({ text }) => text))
        .join('|')
    const some = words({ '1': day.pins['1'] as (typeof day.pins)[string] })
    expect(some.split('not given').length - 1).toBe(17)
    expect(words(day.pins)).not.toContain('not given')
    expect(words({})).toContain('No hole locations were given')
  })

  it('shares greens out so that every sheet may be carried, and fits long names of holes', () => {
    const twenty = Array.from({ length: 20 }, (_, index) => {
      const one = facts.holes[index % 18]!
      return { ...one, hole: { ...one.hole, ref: index === 3 ? 'Garden north 12b' : `${index + 1}` } }
    })
    const pages = pinSheets({ ...facts, holes: twenty }, 480)
    expect(pages.map(({ greens }) => greens.length)).toEqual([10, 10])
    expect(checkPages(pages, 'counting', [])).toEqual([])
    for (const { drawing } of pages) {
      const words = { ...drawing, shapes: drawing.shapes.filter(({ kind }) => kind === 'text') }
      expect(overlaps(textBoxes(words, letters))).toEqual([])
    }
  })

  it('takes another sheet for more than eighteen greens', () => {
    const pages = pinSheets({ ...facts, holes: [...facts.holes, ...facts.holes.slice(0, 9)] }, 480)
    expect(pages.map(({ greens }) => greens.length)).toEqual([18, 9])
  })
})

describe('approachHole', () => {
  it('turns the last leg up the page and keeps every length', () => {
    for (const hole of holes) {
      const turned = approachHole(hole)
      const before = turned.line.at(-2) ?? [0, 0]
      const middle = turned.green?.[0] ?? []
      const centre = middle.reduce((sum, [x]) => sum + x / middle.length, 0)
      // The approach runs through the centre of area, which lies within a metre of the mean of the corners here.
      expect(Math.abs(centre - before[0])).toBeLessThan(1)
      expect(Math.hypot(...turned.pin)).toBeCloseTo(Math.hypot(...hole.pin), 9)
      expect(pinInPaces(turned)).toEqual(pinInPaces(hole))
    }
  })
})
