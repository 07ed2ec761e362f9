import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { disc } from '#golf/strategy/invented-hole.fixture.ts'
import type { Shape } from '../draw/drawing.ts'
import { rectangleSteps } from '../draw/steps.ts'
import { checkPages, greenScale } from './check-pages.ts'
import { greenName, type Page } from './page.ts'

// One test a clause. Source: Rules of Golf 2023, Rule 4.3a and Clarification 4.3a/1, Model Local Rule G-11, as collected in
// test/fixtures/reference/rules_2023.json.

const published = JSON.parse(readFileSync('test/fixtures/reference/rules_2023.json', 'utf8'))
const entry = (rule: string): Record<string, unknown> =>
  published.entries.find((one: { rule: string }) => one.rule === rule)

/** A green of 5 yards by 5 yards drawn so many inches wide, on a page of so many inches. */
function page(greenInches: number, size: readonly [number, number] = [4.25, 7], count = 1): Page {
  const side = 5 * 0.9144
  const outline = [
    [0, 0],
    [side, 0],
    [side, side],
    [0, side],
  ] as const
  const greens = Array.from({ length: count }, (_, index) => ({ ref: String(index + 1), outline: [outline] }))
  const shapes: Shape[] = greens.map(({ ref }) => ({
    kind: 'group',
    name: 'green',
    shapes: [
      {
        kind: 'group',
        name: greenName(ref),
        shapes: [{ kind: 'path', steps: rectangleSteps(20, 20, greenInches * 72, greenInches * 72) }],
      },
    ],
  }))
  return {
    name: 'hole 1',
    greens,
    plansFrom: [{ ref: '1', lie: 'tee' }],
    drawing: { width: size[0] * 72, height: size[1] * 72, title: '', description: '', shapes },
  }
}

describe('checkPages for a counting round', () => {
  it('takes a green of 3/8 inch for 5 yards on a page of 4¼ by 7 inches (Clarification 4.3a/1)', () => {
    expect(entry('Clarification 4.3a/1').max_image_scale).toContain('3/8 inch to 5 yards')
    expect(checkPages([page(3 / 8)], 'counting', [])).toEqual([])
    expect(greenScale(page(3 / 8), page(3 / 8).greens[0] as never)).toBeCloseTo(480, 6)
  })

  it('refuses a green a thousandth larger, with the clause (Clarification 4.3a/1)', () => {
    const [fault, ...others] = checkPages([page((3 / 8) * 1.001)], 'counting', [])
    expect(others).toEqual([])
    expect(fault).toMatchObject({ code: 'MAR-BOOK-004', severity: 'error', place: 'hole 1' })
    expect(fault?.message).toContain('Clarification 4.3a/1')
  })

  it('refuses a page larger than 4¼ by 7 inches, unless it holds nine greens (Clarification 4.3a/1)', () => {
    expect(entry('Clarification 4.3a/1').larger_sheet_allowed).toContain('9 or more holes')
    for (const size of [
      [4.3, 7],
      [4.25, 7.1],
      [7.1, 4.25],
    ] as const) {
      const [fault] = checkPages([page(3 / 8, size)], 'counting', [])
      expect(fault).toMatchObject({ code: 'MAR-BOOK-005' })
      expect(fault?.message).toContain('Clarification 4.3a/1')
    }
    expect(checkPages([page(3 / 8, [7, 4.25])], 'counting', [])).toEqual([])
    expect(checkPages([page(3 / 8, [8.5, 11], 8)], 'counting', [])).toHaveLength(1)
    expect(checkPages([page(3 / 8, [8.5, 11], 9)], 'counting', [])).toEqual([])
  })

  it('refuses slopes of a green (Clarification 4.3a/1)', () => {
    const legal = page(3 / 8)
    const contours: Shape = { kind: 'group', name: 'green-contours', shapes: [] }
    const sloped = {
      ...legal,
      drawing: {
        ...legal.drawing,
        shapes: [{ kind: 'group', shapes: [contours] } as const, ...legal.drawing.shapes],
      },
    }
    const [fault] = checkPages([sloped], 'counting', [])
    expect(fault).toMatchObject({ code: 'MAR-BOOK-003' })
    expect(fault?.message).toContain('Clarification 4.3a/1')
  })

  it('refuses a stroke worked out from where the ball lies (Rule 4.3a(1))', () => {
    expect(entry('4.3a(1)').not_allowed).toContain(
      "interpreting distance or direction for the ball's position (line of play, club)",
    )
    const [fault] = checkPages([{ ...page(3 / 8), plansFrom: [{ ref: '7', lie: 'rough' }] }], 'counting', [])
    expect(fault).toMatchObject({ code: 'MAR-BOOK-002' })
    expect(fault?.message).toContain('4.3a(1)')
  })

  it('refuses pictures where only an approved book may be carried (Model Local Rule G-11), words it takes', () => {
    expect(entry('Model Local Rule G-11').fact).toContain('approved yardage book')
    const [fault] = checkPages([page(3 / 8)], 'counting', ['G-11'])
    expect(fault).toMatchObject({ code: 'MAR-BOOK-001' })
    expect(fault?.message).toContain('G-11')
    const words = { ...page(3 / 8), greens: [], drawing: { ...page(3 / 8).drawing, shapes: [] } }
    expect(checkPages([words], 'counting', ['G-11'])).toEqual([])
  })

  it('takes everything for practice', () => {
    expect(checkPages([page(3, [8.5, 11])], 'practice', ['G-11'])).toEqual([])
  })

  it('measures the drawing and not what is said of it', () => {
    const small = page(3 / 8)
    const outline = disc([0, 0], 20)
    expect(greenScale(small, { ref: '1', outline })).toBeGreaterThan(4000)
    expect(() => greenScale(small, { ref: 'x', outline })).toThrow('draws no green x')
  })
})
