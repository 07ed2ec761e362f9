import { describe, expect, it } from 'vitest'
import { readReader } from './read-reader.ts'

const USUAL = { units: 'yards', windUnit: 'm/s', theme: 'day', print: 'usual' }

describe('readReader', () => {
  it('gives back what was kept', () => {
    const own = { units: 'metres', windUnit: 'knots', theme: 'sun', print: 'large' }
    expect(readReader(JSON.stringify(own))).toEqual(own)
  })

  it('takes the usual for what is missing, unknown or no text at all', () => {
    for (const text of [null, '', '{', 'null', '7', '{"theme":"dusk","units":3}'])
      expect(readReader(text)).toEqual(USUAL)
    expect(readReader('{"theme":"night"}')).toEqual({ ...USUAL, theme: 'night' })
  })
})
