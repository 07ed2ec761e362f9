import { describe, expect, it } from 'vitest'
import { beyondTheSide, PATIENCE, smallTargets, violations } from '../../tools/served-desk.ts'
import { deskAtShort } from './desk-at.ts'

/** Two players and two pins side by side. */
const desk = await deskAtShort()
const { page } = desk

const words = () => page.locator('.compared')
const rows = () => page.locator('.compare tbody tr').allTextContents()

describe('compare', () => {
  it('says what changes for another player, and only that', async () => {
    expect(await words().count()).toBe(0)
    const other = page.getByLabel('Other player', { exact: true })
    await other.selectOption({ index: 1 })
    await words().waitFor()
    expect(await words().textContent()).toMatch(/^(The plan changes|No change)/)
    const name = await other.locator('option:checked').textContent()
    expect(await page.locator('.compare thead').textContent()).toContain(name)
    expect((await rows()).join()).toContain('strokes')
    expect((await rows()).join()).not.toContain('length')
    await other.selectOption({ index: 0 })
    await words().waitFor({ state: 'detached' })
  })

  it('says plainly when nothing changes', async () => {
    await page.getByLabel('Other pin', { exact: true }).selectOption('middle')
    await words().waitFor()
    // The quick plan of the one may stand beside the full plan of the other for a moment.
    await expect.poll(() => words().textContent()).toMatch(/^No change/)
    await page.getByLabel('Other pin', { exact: true }).selectOption('back')
    await words().waitFor()
    await expect.poll(async () => (await rows()).join()).toContain('length')
  })

  it('draws going and laying up as two curves, with the same in words, when it is asked to', async () => {
    const curves = page.locator('.going svg .curves path')
    expect(await curves.count()).toBe(0)
    await page.getByRole('button', { name: 'Draw both as curves' }).click()
    await curves.nth(1).waitFor({ state: 'attached' })
    expect(await page.locator('.going-words').textContent()).toMatch(
      /^From the fairway .* (yards in|reach|along)\b/,
    )
  })

  it('has nothing that a screen reader or a large finger cannot use', async () => {
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    await page.setViewportSize({ width: 320, height: 640 })
    await expect.poll(() => beyondTheSide(page), { timeout: PATIENCE }).toEqual([])
    expect(desk.troubles).toEqual([])
  })
})
