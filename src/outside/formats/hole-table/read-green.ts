import { GREEN_SIDES } from '#golf/course/green-survey.ts'
import type { TypedGreen } from '../green-note.ts'
import { TABLE_DEFAULTS } from '../settings.ts'

/** The slope of a green in figures, metres; what cannot be read is left out and told in `wrong`. */
export interface ReadGreen {
  readonly fall: { readonly percent: number; readonly towardDegrees: number } | null
  readonly tiers: readonly { readonly on: number; readonly rise: number; readonly over: number }[]
  readonly heights: readonly { readonly on: number; readonly beside: number; readonly height: number }[]
  readonly wrong: readonly string[]
}

/** Reads what is typed of a green. A blank toward, rise or height is wrong; a blank place beside is on the line. */
export function readGreen(green: TypedGreen, metresPerUnit: number): ReadGreen {
  const wrong: string[] = []
  const number = (text: string, name: string, limits: Limits): number => {
    const value = /^[+-]?(?:\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) : Number.NaN
    if (text === '') wrong.push(`${name} is blank`)
    else if (Number.isNaN(value)) wrong.push(`${name} is “${text}”, which is no number`)
    else if (value < limits[0] || value > limits[1])
      wrong.push(`${name} is ${text}; it lies between ${limits[0]} and ${limits[1]}`)
    else return value
    return Number.NaN
  }
  const metres = (text: string, name: string): number => number(text, name, LENGTHS) * metresPerUnit
  const isBlank = green.fall === '' && green.toward === ''
  const fall = isBlank
    ? null
    : { percent: number(green.fall, '“fall”', FALLS), towardDegrees: toward(green.toward, wrong, number) }
  const tiers = green.tiers.map(({ on, rise, over }, index) => ({
    on: metres(on, `tier ${index + 1}: “on”`),
    rise: number(rise, `tier ${index + 1}: “up”`, HEIGHTS) / 100,
    over: over === '' ? TABLE_DEFAULTS.tierLength : metres(over, `tier ${index + 1}: “over”`),
  }))
  const heights = green.heights.map(({ on, beside, height }, index) => ({
    on: metres(on, `height ${index + 1}: “on”`),
    beside: beside === '' ? 0 : metres(beside, `height ${index + 1}: “beside”`),
    height: number(height, `height ${index + 1}: “height”`, HEIGHTS) / 100,
  }))
  return {
    fall: fall !== null && isWhole(fall) ? fall : null,
    tiers: tiers.filter(isWhole),
    heights: heights.filter(isWhole),
    wrong,
  }
}

const SIDES: readonly string[] = GREEN_SIDES

type Limits = readonly [least: number, most: number]

/** What a green can be: per cent as the course file takes it, the unit of the table, cm. Our assumption: wide enough for any. */
const FALLS: Limits = [0, 30]
const LENGTHS: Limits = [-100, 100]
const HEIGHTS: Limits = [-1000, 1000]
const DEGREES: Limits = [0, 360]

function toward(
  text: string,
  wrong: string[],
  number: (text: string, name: string, limits: Limits) => number,
): number {
  const side = SIDES.indexOf(text.toLowerCase().replaceAll(/[\s_-]+/g, ' '))
  if (side !== -1) return side * 45
  const degrees = text.replace(/\s*(?:°|deg(?:rees)?)$/i, '')
  if (/^\d/.test(degrees)) return number(degrees, '“toward”', DEGREES)
  wrong.push(
    `“toward” is ${text === '' ? 'blank' : `“${text}”`}; it is a side such as front left, or degrees`,
  )
  return Number.NaN
}

function isWhole(read: Readonly<Record<string, number>>): boolean {
  return Object.values(read).every(Number.isFinite)
}
