import { describe, expect, it } from 'vitest'
import { readPart } from '#outside/print/read-part.ts'
import { renderPdf } from '#outside/print/render-pdf.ts'
import { printedLetters } from '#outside/print/type-setter.ts'
import type { BookFacts } from '#paper/book/book-facts.ts'
import { CARD_KINDS } from '#paper/book/card-kinds.ts'
import { cardPages as pagesOfKind } from '#paper/book/card-pages.ts'
import { inventedFacts, inventedHoles, inventedOption } from '#paper/book/invented-book.fixture.ts'
import type { Page } from '#paper/book/page.ts'
import type { BookHole } from '#paper/book/planned-hole.ts'
import { outside, overlaps, textBoxes } from '#paper/book/text-boxes.fixture.ts'
import type { Shape } from '#paper/draw/drawing.ts'
import { rulerOf } from '#paper/draw/ruler.ts'
import { canReadPdf, fontsOf, longestRun, pictureOf, sizeOf, textOf } from './printed-pages.ts'

// The card as a printer and a reader see it, by the Poppler utilities. Sizes of type: the issue's own, 10 points at least.

const letters = printedLetters(readPart)
const NAME = 'Łucja-Željka Příliš-Žluťoučká Ő'

/** Words of every kind: clear, too close to call, no plan, a hazard with a long name. */
const HOLES: readonly BookHole[] = inventedHoles(18).map((one, index) => {
  if (one.plan === null) return one
  if (index === 5) return { ...one, plan: null, missing: 'The survey has no green for it.' }
  if (index % 3 !== 1) return one
  const options = [
    inventedOption('pitching-wedge', { aim: { heading_deg: 5, offset_m: 16, at_m: 180, start_deg: -5 } }),
    inventedOption('4-hybrid'),
  ]
  const avoid = { what: 'Grumbling Heron’s long burn', side: 'across' } as const
  return { ...one, plan: { ...one.plan, verdict: 'too-close', options, avoid } }
})

function facts(more: Partial<BookFacts> = {}): BookFacts {
  return inventedFacts(letters, HOLES, { playerName: NAME, localRules: ['E-5'], ...more })
}

const cardPages = (asked: BookFacts, kind: keyof typeof CARD_KINDS = 'card'): Page[] =>
  pagesOfKind(asked, CARD_KINDS[kind])

function pdfOf(asked: BookFacts): Promise<Uint8Array> {
  return renderPdf(
    cardPages(asked).map(({ drawing }) => drawing),
    { title: 'Card', readPart },
  )
}

const everyText = (shapes: readonly Shape[]): Extract<Shape, { kind: 'text' }>[] =>
  shapes.flatMap((shape) =>
    shape.kind === 'text' ? [shape] : shape.kind === 'group' ? everyText(shape.shapes) : [],
  )

describe('the card', () => {
  it.each(['a4', 'letter'] as const)(
    'stands on one sheet of %s, nothing cut and nothing on top of anything',
    (paper) => {
      const pages = cardPages(facts({ paper, purpose: paper === 'a4' ? 'counting' : 'practice' }))
      expect(pages).toHaveLength(2)
      for (const { drawing } of pages) {
        const boxes = textBoxes(drawing, letters)
        expect(boxes.length).toBeGreaterThan(20)
        expect(overlaps(boxes)).toEqual([])
        expect(outside(drawing, boxes)).toEqual([])
      }
    },
  )

  it('takes another sheet for words that do not fit, and loses none', () => {
    const what = 'long burn of the old ropemakers that runs down beside the second landing'.repeat(3)
    const wordy = inventedHoles(18, {}, { avoid: { what, side: 'across' } })
    const long = 'Wolfeschlegelsteinhausenbergerdorff'.repeat(4)
    const pages = cardPages(inventedFacts(letters, wordy, { playerName: long, course: long }))
    expect(pages.length).toBeGreaterThan(2)
    const refs = pages.flatMap(({ drawing }) => everyText(drawing.shapes).filter(({ size }) => size === 16))
    expect(refs.map(({ text }) => text)).toEqual(wordy.map(({ hole }) => hole.ref))
    for (const { drawing } of pages) {
      const boxes = textBoxes(drawing, letters)
      expect(overlaps(boxes)).toEqual([])
      expect(outside(drawing, boxes)).toEqual([])
    }
  })

  it('has room for long names of holes and long clubs that a person wrote', () => {
    const named = inventedHoles(9).map((one, index) => ({
      ...one,
      hole: { ...one.hole, ref: index === 2 ? 'Garden north 12b' : `${index + 1}` },
    }))
    const sentence = { reader: 'player', part: 'stroke', under: '', units: 'yards' } as const
    const asked = inventedFacts(letters, named)
    const player = {
      ...asked.player,
      sentences: [
        {
          ...sentence,
          course: asked.course,
          hole: '4',
          club: 'WWWWWWWWWW WWWWWWWWWW WWWWWWWWWW WWWW',
          words: 'Short',
        },
      ],
    }
    for (const kind of ['card', 'large'] as const)
      for (const { drawing } of cardPages({ ...asked, player }, kind)) {
        const boxes = textBoxes(drawing, letters)
        expect(overlaps(boxes)).toEqual([])
        expect(outside(drawing, boxes)).toEqual([])
      }
    const words = cardPages({ ...asked, player }).flatMap(({ drawing }) =>
      everyText(drawing.shapes).map(({ text }) => text),
    )
    // A sentence that a person left open is closed where another follows.
    expect(words.join(' ')).toContain('Short. ')
  })

  it('prints nothing under 10 points, hole numbers at 16 and clubs at 14 in bold', () => {
    const texts = cardPages(facts()).flatMap(({ drawing }) => everyText(drawing.shapes))
    expect(Math.min(...texts.map(({ size }) => size))).toBeGreaterThanOrEqual(10)
    expect(texts.find(({ text }) => text === '18')).toMatchObject({ size: 16, face: 'sans-bold' })
    expect(texts.find(({ text }) => text === '5-wood')).toMatchObject({ size: 14, face: 'sans-bold' })
  })

  it('leaves playing distances out of a counting round (Rule 4.3a(1)), and says what it is for', () => {
    const words = (purpose: BookFacts['purpose']): string =>
      cardPages(facts({ purpose }))
        .flatMap(({ drawing }) => everyText(drawing.shapes).map(({ text }) => text))
        .join(' ')
    expect(words('practice')).toContain('plays 160')
    expect(words('practice')).toContain('Practice only')
    expect(words('counting')).not.toContain('plays')
    expect(words('counting')).toContain('prepared before the start')
  })

  it('speaks metres', () => {
    const texts = cardPages(facts({ ruler: rulerOf('metres') })).flatMap(({ drawing }) =>
      everyText(drawing.shapes).map(({ text }) => text),
    )
    expect(texts).toContain('330 m')
    expect(texts.join(' ')).toContain('Then 139 to the back')
    expect(texts.join(' ')).not.toMatch(/\byd\b|yards/)
  })
})

describe('cards for other readers', () => {
  const textsOf = (pages: readonly Page[]): Extract<Shape, { kind: 'text' }>[] =>
    pages.flatMap(({ drawing }) => everyText(drawing.shapes))

  it.each(['large', 'junior', 'caddie'] as const)(
    'has nothing cut and nothing on top of anything: %s',
    (kind) => {
      for (const paper of ['a4', 'letter'] as const) {
        const pages = cardPages(facts({ paper }), kind)
        for (const { drawing } of pages) {
          const boxes = textBoxes(drawing, letters)
          expect(overlaps(boxes)).toEqual([])
          expect(outside(drawing, boxes)).toEqual([])
        }
        const refs = textsOf(pages).filter(({ text, face }) => face === 'sans-bold' && /^\d+$/.test(text))
        expect(refs.map(({ text }) => text)).toEqual(HOLES.map(({ hole }) => hole.ref))
      }
    },
  )

  // Large print is 16 points or more: common practice.
  it('is set in 16 points or more in large print, rulers aside', () => {
    const sizes = cardPages(facts(), 'large').flatMap(({ drawing }) =>
      everyText(drawing.shapes.filter((shape) => shape.kind !== 'group' || shape.name !== 'rulers')).map(
        ({ size }) => size,
      ),
    )
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(16)
  })

  it('gives a junior no number but the own par, and never a figure of length', () => {
    const [front] = cardPages(facts({ playerName: 'Wren' }), 'junior')
    const words = everyText(front?.drawing.shapes ?? [])
      .map(({ text }) => text)
      .filter((text) => /\d/.test(text) && !/^\d+$/.test(text))
      .map((text) => text.replaceAll(/[45]-(wood|hybrid)/gi, ''))
      .filter((text) => /\d/.test(text))
    expect(words).toHaveLength(HOLES.length)
    for (const text of words) expect(text).toMatch(/^your par [4-7]$/)
  })

  it('gives a caddie numbers and no advice', () => {
    // Sides with holes; the cautions stand behind.
    const sides = cardPages(facts({ purpose: 'counting' }), 'caddie').slice(0, -1)
    const words = textsOf(sides)
      .map(({ text }) => text)
      .join(' ')
    expect(words).toContain('Green: front')
    expect(words).not.toMatch(/\b(start \d|miss|Never|Then)\b/)
  })

  it('says how chips roll on the greens of the day, and a faster green rolls further', () => {
    const day = facts().day
    const chips = (greenSpeedFeet: number): string[] =>
      textsOf(cardPages(facts({ day: { ...day, greenSpeedFeet } })))
        .map(({ text }) => text)
        .filter((text) => text.startsWith('1 to '))
    expect(chips(9)).toEqual(['1 to 4.5', '1 to 1.8'])
    expect(chips(12)).toEqual(['1 to 6.0', '1 to 2.4'])
  })
})

describe.skipIf(!canReadPdf)('the card as PDF', () => {
  it('has every sentence in its text, accents and a long name too', async () => {
    const pdf = await pdfOf(facts())
    const words = textOf(pdf)
    for (const sentence of [
      NAME,
      'start 4 right of the line, finish on it; miss right.',
      'Then 152 to the back, plays 160: 7-iron; rough: 6-iron.',
      'Never left: water.',
      'or 4-hybrid, as you trust:',
      'Never into the Grumbling Heron’s long burn.',
      'No plan: The survey has no green for it.',
      'Thunder or lightning: stop at once.',
      'Rules of Golf, 2023.',
      'Model Local Rule E-5 is in force',
    ])
      expect(words).toContain(sentence)
  })

  it('embeds its fonts, cut down to the letters used, and is the same to the byte', async () => {
    const [first, second] = [await pdfOf(facts()), await pdfOf(facts())]
    expect(Buffer.compare(first, second)).toBe(0)
    const fonts = fontsOf(first)
    expect(fonts.length).toBeGreaterThanOrEqual(4)
    for (const font of fonts) expect(font).toMatchObject({ isEmbedded: true, isSubset: true })
  })

  it('is A4 or letter, on its side', async () => {
    expect(await pdfOf(facts()).then(sizeOf)).toMatchObject({ pages: 2, width: 841.89, height: 595.276 })
    const letter = await pdfOf(facts({ paper: 'letter' }))
    expect(sizeOf(letter)).toMatchObject({ pages: 2, width: 792, height: 612 })
  })

  it('has rulers that are 50 mm and 2 inches long to 0.2 mm at 600 dots to the inch', async () => {
    const pdf = await pdfOf(facts())
    const height = 595.276
    const crop = { left: 0, top: height - 70, width: 167, height: 70 }
    const picture = pictureOf(pdf, 2, 600, crop)
    // The axis is the longest unbroken line of ink; ticks of millimetres stand above it, of inches below.
    const runs = Array.from({ length: picture.height }, (_, y) =>
      longestRun(picture.width, (x) => picture.isDark(x, y)),
    )
    const axis = runs.indexOf(Math.max(...runs))
    expect(Math.abs((Math.max(...runs) / 600) * 25.4 - 50.8)).toBeLessThan(0.2)
    const above = Math.round(axis - (3 * 600) / 72)
    const ticks = starts(picture.width, (x) => picture.isDark(x, above))
    expect(ticks).toHaveLength(51)
    expect(Math.abs((((ticks[50] ?? 0) - (ticks[0] ?? 0)) / 600) * 25.4 - 50)).toBeLessThan(0.2)
  })
})

/** Where each stretch of ink begins. */
function starts(count: number, isDark: (at: number) => boolean): number[] {
  return Array.from({ length: count }, (_, at) => at).filter(
    (at) => isDark(at) && (at === 0 || !isDark(at - 1)),
  )
}
