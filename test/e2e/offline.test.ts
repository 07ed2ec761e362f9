import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { PATIENCE, planned, type ServedDesk, serveDesk, violations } from '../../tools/served-desk.ts'

/** The desk with its server stopped: it opens, plans and keeps; what was kept is sent when the server is back. */
let desk: ServedDesk
let page: Page

beforeAll(async () => {
  desk = await serveDesk()
  page = desk.page
  await page.goto(desk.address)
  await planned(page)
}, PATIENCE * 2)

afterAll(() => desk?.close())

/** The keys of what the browser has copied of the store. */
const COPIES = `new Promise((done, fail) => {
  const asked = indexedDB.open('marram')
  asked.onerror = () => fail(asked.error)
  asked.onsuccess = () => {
    const keys = asked.result.transaction('copies').objectStore('copies').getAllKeys()
    keys.onsuccess = () => { asked.result.close(); done(keys.result) }
  }
})`

const note = () => page.locator('.offline-note')

/** A player from three answers, kept. */
async function newPlayer(name: string): Promise<void> {
  await page.goto(`${desk.address}#/new-player`)
  await page.getByLabel('What is the player called?').fill(name)
  await page.getByRole('radio', { name: /right/i }).first().check()
  await page.getByLabel(/handicap index/).fill('18')
  await page.getByRole('button', { name: 'Make the profile' }).click()
  await page.getByRole('button', { name: 'Keep, and open the desk' }).click()
  await planned(page)
}

/** Changes a player in the store behind the desk's back. */
const CHANGE_ELSEWHERE = `fetch('/api/players/tobin-skell').then(async (kept) => {
  const player = await kept.json()
  const put = await fetch('/api/players/tobin-skell', {
    method: 'PUT',
    headers: { 'Content-Type': 'application/json', 'If-Match': kept.headers.get('ETag') },
    body: JSON.stringify({ ...player, handicapIndex: 9.5 }),
  })
  return put.status
})`

describe('the desk without its server', () => {
  it('opens again and plans in its own workers', async () => {
    await page.evaluate(`navigator.serviceWorker.ready.then(() => true)`)
    // Everything the store holds has been copied once the last day is there.
    await expect
      .poll(() => page.evaluate(COPIES), { timeout: PATIENCE })
      .toEqual(expect.arrayContaining(['courses/sandrel-ness', 'players/tobin-skell', 'days/westerly']))
    await desk.stopServer()
    await page.reload()
    await planned(page)
    expect(await page.evaluate('crossOriginIsolated')).toBe(true)
    await page.getByLabel('Hole', { exact: true }).selectOption('3')
    await page.getByLabel('Player', { exact: true }).selectOption('tobin-skell')
    await page.getByLabel('Day', { exact: true }).selectOption('westerly')
    await planned(page)
    expect(await page.locator('.clubs tbody tr').count()).toBeGreaterThan(3)
  })

  it('keeps a new player, who waits and can be planned for', async () => {
    await newPlayer('Offa Strand')
    expect(await note().textContent()).toContain('Offa Strand: kept in this browser')
    expect(await page.getByLabel('Player', { exact: true }).inputValue()).toBe('offa-strand')
    expect(await violations(page)).toEqual([])
    await page.reload()
    await planned(page)
    expect(await page.getByLabel('Player', { exact: true }).inputValue()).toBe('offa-strand')
  })

  it('sends what waits when the server is back, and says so no more', async () => {
    await desk.startServer()
    await page.evaluate(`dispatchEvent(new Event('online'))`)
    await note().waitFor({ state: 'detached' })
    const status = await page.evaluate(`fetch('/api/players/offa-strand').then(({ status }) => status)`)
    expect(status).toBe(200)
  })

  it('shows a change that was also made elsewhere, and lets a person decide', async () => {
    await page.goto(`${desk.address}#/shots/tobin-skell`)
    await page.getByRole('main').waitFor()
    await desk.stopServer()
    await page.evaluate(WAITING_CHANGE)
    await desk.startServer()
    expect(await page.evaluate(CHANGE_ELSEWHERE)).toBe(200)
    await page.evaluate(`dispatchEvent(new Event('online'))`)
    await page.reload()
    await page.getByText('It was changed elsewhere since.').waitFor()
    await page.getByRole('heading', { level: 1 }).waitFor()
    expect(await violations(page)).toEqual([])
    await page.getByRole('button', { name: 'Keep mine beside it' }).click()
    await note().waitFor({ state: 'detached' })
    const kept = `Promise.all(['tobin-skell', 'tobin-skell-here'].map((id) =>
      fetch('/api/players/' + id).then((answer) => answer.json()).then((player) => player.handicapIndex)))`
    expect(await page.evaluate(kept)).toEqual([9.5, 21.5])
  })
})

/** A change of a player made here while the server is away, as the shots page makes it. */
const WAITING_CHANGE = `new Promise((done, fail) => {
  const asked = indexedDB.open('marram')
  asked.onerror = () => fail(asked.error)
  asked.onsuccess = () => {
    const change = asked.result.transaction(['copies', 'waiting'], 'readwrite')
    const copied = change.objectStore('copies').get('players/tobin-skell')
    copied.onsuccess = () => {
      const text = JSON.stringify({ ...JSON.parse(copied.result.text), handicapIndex: 21.5 })
      change.objectStore('waiting').put({ ...copied.result, text, refusal: '' }, 'players/tobin-skell')
    }
    change.oncomplete = () => { asked.result.close(); done(true) }
  }
})`
