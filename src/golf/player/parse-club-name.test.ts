import { describe, expect, it } from 'vitest'
import { CLUB_KINDS } from './club-names.ts'
import { parseClubName } from './parse-club-name.ts'

describe('parseClubName', () => {
  it('takes every name that a player file may have for itself', () => {
    for (const { name } of [...CLUB_KINDS, { name: '52-wedge' }])
      expect(parseClubName(name), name).toEqual({ kind: 'club', name })
  })

  it.each([
    ['driver', ['Driver', 'DR', 'd', '1W', '1 wood']],
    [
      '3-wood',
      ['3w', '3 Wood', 'W3', 'wood 3', '3-WOOD', 'Holz 3', 'bois 3', '3 fairway wood', 'Three Wood'],
    ],
    ['5-hybrid', ['5h', 'H5', 'Hy5', 'hybrid 5', '5_hyb', 'Híbrido 5']],
    ['7-iron', ['7i', 'I7', '7 iron', 'Iron-7', 'IRON7', 'Eisen 7', 'fer 7', 'seven iron']],
    ['pitching-wedge', ['PW', 'Pitching Wedge', 'pitching_wedge', 'P']],
    ['gap-wedge', ['GW', 'AW', 'Approach Wedge']],
    ['sand-wedge', ['SW', 'Sand Wedge', 'sand iron']],
    ['lob-wedge', ['LW', 'Lob wedge']],
    [
      '56-wedge',
      ['56', '56°', '56 deg', '56-wedge', 'Wedge 56', 'SW 56', 'sand wedge (56)', '56 degree wedge'],
    ],
  ])('reads %s in its spellings', (name, spellings) => {
    for (const spelling of spellings)
      expect(parseClubName(spelling), spelling).toEqual({ kind: 'club', name })
  })

  it('knows the putter, which is no full shot', () => {
    for (const spelling of ['Putter', 'PT']) expect(parseClubName(spelling)).toEqual({ kind: 'putter' })
  })

  it('asks what a number alone is, and takes no word for a club that is none', () => {
    expect(parseClubName('5')).toEqual({ kind: 'unknown', likely: ['5-wood', '5-hybrid', '5-iron'] })
    for (const word of ['', 'Average', '10-iron', '9-hybrid', '12', '72', 'chipper', '7x'])
      expect(parseClubName(word), word).toEqual({ kind: 'unknown', likely: [] })
  })
})
