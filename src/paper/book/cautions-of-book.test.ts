import { describe, expect, it } from 'vitest'
import { readPart } from '#outside/print/read-part.ts'
import { printedLetters } from '#outside/print/type-setter.ts'
import { cautionsOfBook } from './cautions-of-book.ts'
import { inventedFacts, inventedHoles } from './invented-book.fixture.ts'

describe('cautionsOfBook', () => {
  it('names the holes that a caution is of where others are without it', () => {
    const holes = inventedHoles(3).map((one, index) => {
      if (one.plan === null) throw new Error('an invented hole has a plan')
      const cautions = [...one.plan.cautions, ...(index === 1 ? [] : ['No heights.'])]
      return { ...one, plan: { ...one.plan, cautions } }
    })
    const said = cautionsOfBook(inventedFacts(printedLetters(readPart), holes))
    expect(said).toContain('Thunder or lightning: stop at once.')
    expect(said).toContain('No heights. (Holes 1, 3.)')
  })

  it('says of plans by quick settings that they are rough', () => {
    const holes = inventedHoles(2).map((one) =>
      one.plan === null ? one : { ...one, plan: { ...one.plan, method: { ...one.plan.method, cell_m: 8 } } },
    )
    const letters = printedLetters(readPart)
    expect(cautionsOfBook(inventedFacts(letters, holes)).join()).toContain('quick settings')
    expect(cautionsOfBook(inventedFacts(letters, inventedHoles(2))).join()).not.toContain('quick settings')
  })
})
