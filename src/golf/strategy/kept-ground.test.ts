import { describe, expect, it } from 'vitest'
import { inventedHole } from './invented-hole.fixture.ts'
import { keptGround } from './kept-ground.ts'

describe('keptGround', () => {
  it('lays a hole out once while it is asked for the same, and anew when hole or cells differ', () => {
    const groundOf = keptGround()
    const first = groundOf(inventedHole(120), 12)
    expect(groundOf(inventedHole(120), 12)).toBe(first)
    expect(groundOf(inventedHole(120), 16)).not.toBe(first)
    const other = groundOf(inventedHole(130), 16)
    expect(other.hole.lengthMetres).toBe(130)
    expect(groundOf(inventedHole(120), 12)).not.toBe(first)
  })
})
