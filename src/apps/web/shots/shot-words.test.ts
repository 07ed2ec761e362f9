import { describe, expect, it } from 'vitest'
import type { Reader } from '../desk/desk.ts'
import { exactFigure, parseLength, parseSide, reachable, sideFigure } from './shot-words.ts'

const YARDS: Reader = { units: 'yards', windUnit: 'm/s', theme: 'day', print: 'usual' }
const METRES: Reader = { ...YARDS, units: 'metres' }

describe('a shot in figures', () => {
  it('is put down to a tenth of the unit that is read', () => {
    // 1 yd = 0.9144 m: international yard and pound agreement of 1959.
    expect(reachable({ along: 100, right: -3 }, 'carry', YARDS)).toEqual({
      along: 109.4 * 0.9144,
      right: -3.3 * 0.9144,
    })
    expect(reachable({ along: 100.04, right: 0.06 }, 'carry', METRES)).toEqual({ along: 100, right: 0.1 })
  })

  it('stays where a table of shots is believed: past the ball, no further than balls go', () => {
    expect(reachable({ along: -20, right: 900 }, 'carry', METRES)).toEqual({ along: 1, right: 199 })
    expect(reachable({ along: 450, right: 0 }, 'carry', METRES).along).toBe(399)
    expect(reachable({ along: 450, right: 0 }, 'total', METRES).along).toBe(450)
  })

  it('says sides in words and never a minus before nothing', () => {
    expect(sideFigure(-0.001, METRES)).toBe('on the line')
    expect(sideFigure(-4.5 * 0.9144, YARDS)).toBe('4.5 left')
    expect(exactFigure(118 * 0.9144, YARDS)).toBe('118')
  })

  it.each([
    ['6', 6],
    ['-6', -6],
    ['−6,5', -6.5],
    ['6 left', -6],
    ['6L', -6],
    ['0 left', 0],
    ['.5 right', 0.5],
    ['', 0],
    ['on the line', 0],
    ['-6 left', null],
    ['six', null],
    ['6 yd', null],
  ])('reads “%s” off the line as %j', (text, side) => {
    expect(parseSide(text)).toBe(side)
  })

  it.each([
    ['118', 118],
    ['118,4', 118.4],
    ['-118', null],
    ['', null],
    ['118 yd', null],
  ])('reads “%s” along the line as %j', (text, length) => {
    expect(parseLength(text)).toBe(length)
  })
})
