import { describe, expect, it } from 'vitest'
import { partnerNames } from './first-name.ts'

describe('partnerNames', () => {
  it('are the names on pages', () => {
    expect(partnerNames([{ name: 'Wren Hollis', age: 12 }, { name: 'Ebbe Strömnäs' }])).toEqual([
      'Wren',
      'Ebbe Strömnäs',
    ])
  })

  it('tell two minors of one first name apart', () => {
    expect(
      partnerNames([
        { name: 'Wren Hollis', age: 12 },
        { name: 'Wren Aldous', age: 13 },
      ]),
    ).toEqual(['Wren 1', 'Wren 2'])
  })
})
