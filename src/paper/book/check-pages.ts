import type { Fault } from '#faults/fault.ts'
import { RULES_2023 } from '#golf/rules/rules-2023.ts'
import { polygonBounds } from '#numbers/geometry/polygon.ts'
import type { GroupShape, Shape } from '../draw/drawing.ts'
import { checkWords } from './check-words.ts'
import { type DrawnGreen, greenName, type Page } from './page.ts'
import { POINTS_PER_INCH, POINTS_PER_MILLIMETRE } from './settings.ts'
import type { Purpose } from './stroke-words.ts'

/**
 * What on these pages would break the Rules where they are meant to be carried, measured on the pages as drawn: empty for
 * practice. Source: Rules of Golf 2023, Rule 4.3a and Clarification 4.3a/1, Model Local Rule G-11, by `rules-2023.ts`.
 */
export function checkPages(pages: readonly Page[], purpose: Purpose, localRules: readonly string[]): Fault[] {
  if (purpose === 'practice') return []
  const written = pages.flatMap((page) => page.written ?? [])
  const words = checkWords([...new Set(written)])
  const drawn = pages.flatMap((page) => [
    ...checkApproved(page, localRules),
    ...checkLive(page),
    ...checkSlopes(page),
    ...checkScales(page),
    ...checkSize(page),
  ])
  return [...drawn, ...words]
}

/** How many times smaller a green stands on its page than it is: metres of ground for a metre of paper. */
export function greenScale(page: Page, { ref, outline }: DrawnGreen): number {
  const group = groupsOf(page.drawing.shapes).find(({ name }) => name === greenName(ref))
  const points = group?.shapes.flatMap((shape) =>
    shape.kind === 'path' ? shape.steps.flatMap((step) => (step[0] === 'Z' ? [] : [step.slice(-2)])) : [],
  )
  if (points === undefined || points.length === 0) throw new Error(`${page.name} draws no green ${ref}`)
  const [xs, ys] = [points.map(([x]) => Number(x)), points.map(([, y]) => Number(y))]
  const drawn = Math.hypot(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys))
  const { minX, minY, maxX, maxY } = polygonBounds(outline)
  return (Math.hypot(maxX - minX, maxY - minY) * 1000 * POINTS_PER_MILLIMETRE) / drawn
}

/** Every group of a drawing, groups within groups too. */
function groupsOf(shapes: readonly Shape[]): GroupShape[] {
  return shapes.flatMap((shape) => (shape.kind === 'group' ? [shape, ...groupsOf(shape.shapes)] : []))
}

function holds(page: Page, names: readonly string[]): boolean {
  return groupsOf(page.drawing.shapes).some(({ name }) => name !== undefined && names.includes(name))
}

const { greenBook, devices, edition } = RULES_2023

function checkApproved(page: Page, localRules: readonly string[]): Fault[] {
  const rule = greenBook.approvedOnlyLocalRule
  if (!localRules.includes(rule) || !holds(page, ['ground', 'green'])) return []
  return [
    {
      severity: 'error',
      code: 'MAR-BOOK-001',
      message: `The Committee has Model Local Rule ${rule} in force: only a yardage book that it approved may be carried.`,
      place: page.name,
      advice: 'Print a card of words alone with --text-only, which asks for a player.',
    },
  ]
}

function checkLive(page: Page): Fault[] {
  return page.plansFrom
    .filter(({ lie }) => lie !== 'tee')
    .map(({ ref }) => ({
      severity: 'error',
      code: 'MAR-BOOK-002',
      message: `A stroke on hole ${ref} is worked out from where a ball lies, which is not allowed in a round (${edition}, Rule ${devices.clause}).`,
      place: page.name,
      advice: 'Plan from the tee, before the round.',
    }))
}

function checkSlopes(page: Page): Fault[] {
  if (!holds(page, ['green-contours'])) return []
  return [
    {
      severity: 'error',
      code: 'MAR-BOOK-003',
      message: `A green's slope is drawn. ${greenBook.clause} of the ${edition} restricts what shows slopes; Marram prints none to be carried in a counting round, and by hand only the player or the caddie may add notes.`,
      place: page.name,
      advice: 'Print it for practice.',
    },
  ]
}

function checkScales(page: Page): Fault[] {
  return page.greens.flatMap((green): Fault[] => {
    const scale = greenScale(page, green)
    if (scale >= greenBook.scaleDenominator * (1 - ROUNDING)) return []
    return [
      {
        severity: 'error',
        code: 'MAR-BOOK-004',
        message: `Green ${green.ref} stands at 1:${Math.round(scale)}, larger than 3/8 inch for 5 yards (1:${greenBook.scaleDenominator}), the most that ${greenBook.clause} of the ${edition} allows.`,
        place: page.name,
        advice: `Print at --green-scale 1:${greenBook.scaleDenominator} or smaller, or for practice.`,
      },
    ]
  })
}

/** Far under the width of a line: a green at just the limit is not refused for the last bit of a number. */
const ROUNDING = 1e-6

function checkSize(page: Page): Fault[] {
  const { width, height } = page.drawing
  const [least, most] = [Math.min(width, height), Math.max(width, height)].map(
    (side) => side / POINTS_PER_INCH,
  )
  const [wide, high] = greenBook.pageInches
  const isLarger = (least ?? 0) > wide * (1 + ROUNDING) || (most ?? 0) > high * (1 + ROUNDING)
  const isPicture = holds(page, ['ground', 'green'])
  if (!isPicture || !isLarger || page.greens.length >= greenBook.largerSheetHoles) return []
  return [
    {
      severity: 'error',
      code: 'MAR-BOOK-005',
      message: `The page measures ${least?.toFixed(2)} by ${most?.toFixed(2)} inches; ${greenBook.clause} of the ${edition} allows ${wide} by ${high}, and a larger sheet only with ${greenBook.largerSheetHoles} greens or more.`,
      place: page.name,
      advice:
        page.greens.length > 1
          ? `Print ${greenBook.largerSheetHoles} greens or more, a pocket book, or for practice.`
          : 'Print pages of the legal size, or for practice.',
    },
  ]
}
