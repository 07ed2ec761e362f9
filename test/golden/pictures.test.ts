import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { renderSvg } from '#paper/draw/render-svg.ts'
import { PICTURES } from './pictures.ts'

/**
 * Pictures are tests: each is drawn anew and must equal the committed SVG to the last byte. A changed one is written
 * beside it as `.changed.svg`; `npx tsx tools/pictures.ts` shows both, and with `--accept` takes the changed ones over.
 */
describe('pictures', () => {
  it('has one of every drawing function', () => {
    const folder = new URL('../../src/paper/draw/', import.meta.url)
    const drawn = readFileSync(new URL('./pictures.ts', import.meta.url), 'utf8')
    const functions = readdirSync(folder)
      .filter((file) => /^draw-.*(?<!\.test)\.ts$/.test(file))
      .flatMap((file) => readFileSync(new URL(file, folder), 'utf8').match(/(?<=^export function )draw\w+/gm) ?? [])
    expect(functions.length).toBeGreaterThan(15)
    // Halves of `drawHole`, and a short shot of a plan, which is handed on to `drawShortShot`.
    const within = ['drawMarks', 'drawSurvey', 'drawShortOption']
    expect(functions.filter((name) => !within.includes(name) && !drawn.includes(`${name}(`))).toEqual([])
  })

  it.each(Object.keys(PICTURES))('%s is drawn as committed', (name) => {
    const file = new URL(`./expected/${name}.svg`, import.meta.url)
    const changed = new URL(`./expected/${name}.changed.svg`, import.meta.url)
    const svg = renderSvg(PICTURES[name]!())
    const expected = existsSync(file) ? readFileSync(file, 'utf8') : null
    if (svg === expected) rmSync(changed, { force: true })
    else writeFileSync(changed, svg)
    expect(svg === expected, `${name} changed: look at it with npx tsx tools/pictures.ts`).toBe(true)
  })

  it.each(Object.keys(PICTURES))('%s is the same bytes when drawn twice, and holds no broken number', (name) => {
    const svg = renderSvg(PICTURES[name]!())
    expect(renderSvg(PICTURES[name]!())).toBe(svg)
    expect(svg).not.toMatch(/NaN|Infinity|undefined/)
    expect(svg).toMatch(/<title [^>]*>[^<]+<\/title>\n<desc [^>]*>[^<]+<\/desc>/)
  })
})
