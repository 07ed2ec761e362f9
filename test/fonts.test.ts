import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { CUT_FACES, cutFace, keptRange, pathOf } from '../tools/subset-fonts.ts'

describe('the faces of the desk', () => {
  it.each(CUT_FACES)('%s comes out of the whole face byte by byte', async (face) => {
    expect((await cutFace(face)).equals(readFileSync(pathOf(face)))).toBe(true)
  })

  it('are asked for the letters that they keep, and the whole faces for the others', () => {
    const style = readFileSync(new URL('../src/apps/web/style/fonts.css', import.meta.url), 'utf8')
    const ranges = [...style.matchAll(/unicode-range:\s*([^;]+);/g)].map(([, range = '']) => codesOf(range))
    const kept = codesOf(keptRange())
    // The letters of the Latin face, as its package lists them.
    const listed = new URL('../node_modules/@fontsource/eb-garamond/unicode.json', import.meta.url)
    const all = codesOf(JSON.parse(readFileSync(listed, 'utf8')).latin as string)
    expect(ranges).toHaveLength(2 * CUT_FACES.length)
    for (const [index, range] of ranges.entries())
      expect([...range].sort()).toEqual(
        [...all].filter((code) => isPrinted(code) && kept.has(code) === (index % 2 === 0)).sort(),
      )
  })
})

/** Codes named by a list of ranges in CSS. */
function codesOf(ranges: string): Set<number> {
  const codes = new Set<number>()
  for (const [, from = '', to = from] of ranges.matchAll(/U\+([0-9A-F]+)(?:-([0-9A-F]+))?/gi))
    for (let code = Number.parseInt(from, 16); code <= Number.parseInt(to, 16); code += 1) codes.add(code)
  return codes
}

/** Control characters and the mark of the byte order are no letters. */
function isPrinted(code: number): boolean {
  return !(code < 0x20 || (code > 0x7e && code < 0xa0) || code === 0xfeff)
}
