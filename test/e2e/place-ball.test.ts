import { describe, expect, it } from 'vitest'
import { planned, smallTargets, violations } from '../../tools/served-desk.ts'
import { deskAtShort } from './desk-at.ts'

/** The ball put anywhere in any lie, and planned on from there. */
const desk = await deskAtShort()
const { page } = desk

const where = async (): Promise<string> =>
  (await page.locator('.ball-controls p').textContent())?.trim() ?? ''
const left = async (): Promise<number> => Number(/(\d+) yd to the pin/.exec(await where())?.[1])
const sentence = async (): Promise<string> => (await page.locator('.plan-sentence').textContent()) ?? ''

async function dragBall(up: number, left = 0): Promise<void> {
  const box = (await page.locator('.handle-ball').boundingBox())!
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  await page.mouse.move(x - left, y - up, { steps: 6 })
  await page.mouse.up()
}

describe('the ball', () => {
  it('lies on the markers until it is dragged; the plan is then from there', async () => {
    expect(await where()).toMatch(/^On the markers, \d+ yd to the pin$/)
    const before = [await left(), await sentence()]
    await dragBall(120)
    await planned(page)
    expect(await where()).toMatch(/^From the \w+/)
    expect(await left()).toBeLessThan(before[0] as number)
    expect(await sentence()).not.toBe(before[1])
    await page.keyboard.press('Control+z')
    await planned(page)
    expect(await where()).toMatch(/^On the markers/)
    await expect.poll(sentence).toBe(before[1])
  })

  it('goes by steps and keys, and back to the tee', async () => {
    const before = await left()
    await page.getByRole('button', { name: 'Ball 5 yd further' }).click()
    expect(before - (await left())).toBeCloseTo(5, 0)
    await page.locator('.handle-ball').focus()
    for (let key = 0; key < 3; key += 1) await page.keyboard.press('ArrowUp')
    expect(before - (await left())).toBeCloseTo(8, 0)
    await page.getByRole('button', { name: 'Back to the tee' }).click()
    expect(await where()).toMatch(/^On the markers/)
  })

  it('is taken back and put forth again, also after the page was loaded anew', async () => {
    await page.getByRole('button', { name: 'Ball 5 yd further' }).click()
    const put = await where()
    await page.reload()
    await planned(page)
    await expect.poll(left).toBe(Number(/(\d+) yd/.exec(put)?.[1]))
    await page.getByRole('button', { name: 'Undo' }).click()
    expect(await where()).toMatch(/^On the markers/)
    await page.keyboard.press('Control+Shift+Z')
    expect(await where()).not.toMatch(/^On the markers/)
    await page.getByRole('button', { name: 'Undo' }).click()
    await page.getByRole('button', { name: 'Redo' }).click()
    expect(await page.getByRole('button', { name: 'Redo' }).isDisabled()).toBe(true)
    await page.getByRole('button', { name: 'Undo' }).click()
    await planned(page)
  })

  it('lies as it is told: heavy grass costs more than the ground there', async () => {
    await dragBall(100)
    await planned(page)
    const strokes = async (): Promise<number> =>
      Number(/(\d\.\d+) strokes/.exec((await page.locator('.value').textContent()) ?? '')?.[1])
    const before = await strokes()
    await page.getByLabel('Lie', { exact: true }).selectOption('heavy')
    await planned(page)
    expect(await where()).toMatch(/^From the heavy grass/)
    expect(await strokes()).toBeGreaterThan(before)
  })

  it('in the water asks what relief there is, listed and on the chart; one tap plans on from it', async () => {
    await page.getByRole('button', { name: 'Back to the tee' }).click()
    await dragBall(215, 50)
    const options = page.locator('.relief tbody tr')
    await options.getByText('Rule 17.1d(1)').waitFor()
    expect(await sentence()).toMatch(/^Ball in a yellow penalty area\./)
    // Rules of Golf 2023, 17.1d: stroke and distance and back on the line; as it lies by 17.1b.
    expect(
      (await options.getByRole('button').allTextContents()).map((words) => words.slice(2)).sort(),
    ).toEqual(['back on the line', 'stroke and distance'])
    expect(await page.locator('.chart svg .relief').count()).toBe(1)
    expect(await violations(page)).toEqual([])
    await options.getByRole('button', { name: 'back on the line' }).click()
    await planned(page)
    expect(await where()).toMatch(/^From the \w/)
    expect(await options.count()).toBe(0)
    await page.getByRole('button', { name: 'Undo' }).click()
    await options.first().waitFor()
    expect(await where()).toMatch(/^From where it lies/)
    await page.getByLabel('Lie', { exact: true }).selectOption('rough')
    await planned(page)
  })

  it('near the green shows the shot from the side', async () => {
    await page.getByLabel('Lie', { exact: true }).selectOption('')
    for (let step = 0; step < 60 && (await left()) > 25; step += 1)
      await page.getByRole('button', { name: 'Ball 5 yd further' }).click()
    await planned(page)
    await page.getByRole('heading', { name: 'From the side' }).waitFor()
    await page.locator('.side-view svg').waitFor()
    expect(await page.getByRole('heading', { name: 'What flips it' }).count()).toBe(0)
  })

  it('is played for a format that says what it changes, in its own unit, and back for the fewest strokes', async () => {
    const kind = page.getByLabel('Played for', { exact: true })
    const lines = page.locator('.format-lines p')
    await kind.selectOption('at-most')
    await page.getByRole('button', { name: 'So far: one step more' }).click()
    await lines.getByText(/^(The format changes nothing here|For 3 or better)/).waitFor()
    expect(await lines.nth(1).textContent()).toMatch(/^3 or better: \d+ in 100/)
    expect(await page.locator('.clubs thead').textContent()).toContain('cost in chance')
    expect(await sentence()).toMatch(/^(The format changes nothing here|For 3 or better)/)
    // On a slow machine the choice and the step are two steps of undo.
    while ((await kind.inputValue()) !== 'strokes') await page.keyboard.press('Control+z')
    await expect.poll(() => page.locator('.clubs thead').textContent()).toContain('cost in strokes')
    await page.getByRole('button', { name: 'Redo' }).click()
    await page.reload()
    await planned(page)
    expect(await kind.inputValue()).toBe('at-most')
  })

  it('has nothing that a screen reader or a large finger cannot use', async () => {
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    expect(desk.troubles).toEqual([])
  })
})
