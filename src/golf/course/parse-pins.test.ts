import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { DayPin } from './day.ts'
import { dayPinWords } from './day-pin-words.ts'
import { parsePin, parsePins, requirePins } from './parse-pins.ts'

const paces = fc.integer({ min: 0, max: 80 })
const anyPin: fc.Arbitrary<DayPin> = fc.oneof(
  fc.record({ yPaces: paces, xPaces: paces, from: fc.constantFrom('left' as const, 'right' as const) }),
  paces.map((yPaces) => ({ yPaces, xPaces: 0, from: 'middle' as const })),
)

describe('parsePin', () => {
  it.each([
    // Paces on, then in from the nearer side: how pin sheets are written, common practice.
    ['14 on, 6 left', { yPaces: 14, xPaces: 6, from: 'left' }],
    ['14 6L', { yPaces: 14, xPaces: 6, from: 'left' }],
    ['14/6 r', { yPaces: 14, xPaces: 6, from: 'right' }],
    ['14, 6 from the right', { yPaces: 14, xPaces: 6, from: 'right' }],
    [' 9.5 on 4 Left ', { yPaces: 9.5, xPaces: 4, from: 'left' }],
    ['14 middle', { yPaces: 14, xPaces: 0, from: 'middle' }],
    ['14C', { yPaces: 14, xPaces: 0, from: 'middle' }],
  ])('reads %s', (words, pin) => {
    expect(parsePin(words, 'hole 7')).toEqual({ pin, fault: null })
  })

  it.each(['', '14', '14 on', '14 6', '6 left', '14 on, 6 back', '14 -6 left', '14 6 left 3'])(
    'says that "%s" is no place',
    (words) => {
      const { pin, fault } = parsePin(words, 'hole 7')
      expect(pin).toBeNull()
      expect(fault).toMatchObject({ code: 'MAR-DAY-008', place: 'hole 7' })
    },
  )

  it('says that no green is so deep', () => {
    expect(parsePin('140 on, 6 left', 'hole 7').fault?.message).toBe(
      '140 paces is further than the 80 a green can be.',
    )
  })

  it('reads back what a sheet prints', () => {
    fc.assert(
      fc.property(anyPin, (pin) => {
        expect(parsePin(dayPinWords(pin), '')).toEqual({ pin, fault: null })
      }),
    )
  })
})

describe('parsePins', () => {
  it('keeps each good line and places each bad one', () => {
    const text =
      '﻿# Sunday\n1: 14 on, 6 left\r\n2 : 9 middle # behind the mound\n\n3: 11\nnine: 3 on\n1: 4 2R\n4 12 6L'
    const { pins, faults } = parsePins(text)
    expect(pins).toEqual({
      1: { yPaces: 14, xPaces: 6, from: 'left' },
      2: { yPaces: 9, xPaces: 0, from: 'middle' },
    })
    expect(faults.map(({ code, place }) => `${code} ${place}`)).toEqual([
      'MAR-DAY-008 line 5, hole 3',
      'MAR-DAY-008 line 6, hole nine',
      'MAR-DAY-009 line 7',
      'MAR-DAY-008 line 8',
    ])
  })

  it('takes any text without harm', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const { pins, faults } = parsePins(text)
        const lines = text.split(/\r\n|\r|\n/).length
        expect(Object.keys(pins).length + faults.length).toBeLessThanOrEqual(lines)
      }),
    )
  })
})

describe('requirePins', () => {
  it('refuses a sheet with a line that is not read, and an empty one', () => {
    expect(() => requirePins('1: 14\n2: 3', 'sunday.txt')).toThrow(/1 more in the file/)
    expect(() => requirePins('# nothing yet', 'sunday.txt')).toThrow(/No line is a hole location/)
    expect(requirePins('1: 14 6L', 'sunday.txt')).toEqual({ 1: { yPaces: 14, xPaces: 6, from: 'left' } })
  })
})
