import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { canReadPdf } from '../acceptance/printed-pages.ts'
import { groundPatches } from './ground-patches.ts'
import { apartBy, textureOf } from './patch-texture.ts'
import { type Copy, decodePng, encodePng, inkAt, photocopies } from './photocopy.ts'
import { PICTURES } from './pictures.ts'

/**
 * Ground is told by pattern, not by colour: on a copy in two and in four greys every class of ground is still told from
 * every other. The copies are committed to be looked at. They are compared by what an eye sees of them and not by their
 * bytes, which another version of Poppler may change.
 */
const { drawing, patches } = groundPatches()

describe.skipIf(!canReadPdf)('on a grey photocopy', () => {
  it('every class of ground is told from every other', async () => {
    for (const copy of await photocopies(drawing)) {
      const seen = patches.map((patch) => ({ ground: patch.ground, texture: textureOf(copy, patch) }))
      expect(seen.length).toBe(14)
      const alike = seen.flatMap((one, place) =>
        seen
          .slice(place + 1)
          .map((other) => ({ pair: `${one.ground}, ${other.ground}`, apart: apartBy(one.texture, other.texture) }))
          .filter(({ apart }) => apart < 1),
      )
      expect([copy.bits, alike]).toEqual([copy.bits, []])
    }
  })

  it('the grounds look as committed', async () => {
    for (const copy of await photocopies(drawing))
      compare(`ground-${2 ** copy.bits}-greys`, copy, (committed) =>
        Math.max(...patches.map((patch) => apartBy(textureOf(copy, patch), textureOf(committed, patch)))),
      )
  })

  it('a whole hole looks as committed', async () => {
    for (const copy of await photocopies(PICTURES['every-ground']!()))
      compare(`hole-${2 ** copy.bits}-greys`, copy, (committed) => blocksApart(copy, committed) / 0.2)
  })
})

/** Fails unless a copy is as the committed one, a quarter of the least difference between two grounds allowed; writes it beside otherwise. */
function compare(name: string, copy: Copy, apartFrom: (committed: Copy) => number): void {
  const file = new URL(`./expected/${name}.png`, import.meta.url)
  const changed = new URL(`./expected/${name}.changed.png`, import.meta.url)
  const committed = existsSync(file) ? decodePng(readFileSync(file)) : null
  const apart =
    committed?.width === copy.width && committed.height === copy.height ? apartFrom(committed) : Infinity
  if (apart <= 0.25) rmSync(changed, { force: true })
  else writeFileSync(changed, encodePng(copy))
  expect(apart, `${name} changed: look at it with npx tsx tools/pictures.ts`).toBeLessThanOrEqual(0.25)
}

/** The most that the ink of any block of 16 × 16 dots differs. */
function blocksApart(one: Copy, other: Copy): number {
  const columns = Math.ceil(one.width / 16)
  const blocks = new Float64Array(columns * Math.ceil(one.height / 16))
  for (let y = 0; y < one.height; y += 1)
    for (let x = 0; x < one.width; x += 1) {
      const block = (y >> 4) * columns + (x >> 4)
      blocks[block] = (blocks[block] ?? 0) + (inkAt(one, x, y) - inkAt(other, x, y)) / 256
    }
  return Math.max(...blocks.map(Math.abs))
}
