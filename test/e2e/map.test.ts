import geodesic from 'geographiclib-geodesic'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { mapSource } from '#apps/server/map-tiles.ts'
import { readLineStart } from '#outside/formats/line-start.ts'
import {
  beyondTheSide,
  PATIENCE,
  type ServedDesk,
  serveDesk,
  smallTargets,
  violations,
} from '../../tools/served-desk.ts'
import { type Colour, serveTiles, type TileServer } from '../fixtures/tile-server.ts'

/** A hole traced over a map: every place on it is laid out by GeographicLib, and found again by what the eye sees. */
const earth = geodesic.Geodesic.WGS84
const TEE = { latitude: 55.9, longitude: -2.1 }
const HEADING = 58
const PIN_METRES = 300
/** A pond 200 m on and 30 m to the right. */
const POND = { along: 200, right: 30, radius: 7 }

type Place = typeof TEE

function placeFrom({ latitude, longitude }: Place, degrees: number, metres: number): Place {
  const { lat2 = 0, lon2 = 0 } = earth.Direct(latitude, longitude, degrees, metres)
  return { latitude: lat2, longitude: lon2 }
}

const PIN = placeFrom(TEE, HEADING, PIN_METRES)
const MIDDLE_OF_POND = placeFrom(
  TEE,
  HEADING + (Math.atan2(POND.right, POND.along) * 180) / Math.PI,
  Math.hypot(POND.along, POND.right),
)
const GRASS: Colour = [130, 150, 110]
const WATER: Colour = [250, 0, 250]

let tiles: TileServer
let desk: ServedDesk
let page: Page
beforeAll(async () => {
  tiles = await serveTiles((longitude, latitude) => {
    const { s12 = 0 } = earth.Inverse(latitude, longitude, MIDDLE_OF_POND.latitude, MIDDLE_OF_POND.longitude)
    return s12 < POND.radius ? WATER : GRASS
  })
  desk = await serveDesk(mapSource(tiles.template, '© the survey of Nowhere', 18))
  page = desk.page
  await page.goto(`${desk.address}#/survey`)
}, PATIENCE * 2)
afterAll(async () => {
  await desk?.close()
  await tiles?.close()
})

/** The middle of all that is as pink as the pond, CSS pixels of the window. */
async function seenPond(): Promise<{ readonly x: number; readonly y: number }> {
  const picture = (await page.screenshot({ scale: 'css' })).toString('base64')
  return page.evaluate(`new Promise((done, fail) => {
    const image = new Image()
    image.onerror = fail
    image.onload = () => {
      const canvas = Object.assign(document.createElement('canvas'), { width: image.width, height: image.height })
      const context = canvas.getContext('2d')
      context.drawImage(image, 0, 0)
      const { data } = context.getImageData(0, 0, image.width, image.height)
      let [x, y, count] = [0, 0, 0]
      for (let at = 0; at < data.length; at += 4)
        if (data[at] > 170 && data[at + 2] > 170 && data[at + 1] < 110) {
          x += (at / 4) % image.width
          y += Math.floor(at / 4 / image.width)
          count += 1
        }
      count > 20 ? done({ x: x / count + 0.5, y: y / count + 0.5 }) : fail(new Error('no pond is seen: ' + count))
    }
    image.src = 'data:image/png;base64,${picture}'
  })`)
}

/** Waits until every tile that is asked for is there. */
const drawn = (): Promise<void> =>
  expect
    .poll(() =>
      page.evaluate(`(() => {
        const tiles = [...document.querySelectorAll('.under-tile')]
        return tiles.length > 0 && tiles.every((tile) => tile.complete && tile.naturalWidth > 0)
      })()`),
    )
    .toBe(true)

/** Drags the map so that a place so far east and north of its middle comes under the cross, at a pixel a metre. */
async function bringToCross(from: Place, to: Place): Promise<void> {
  const { s12 = 0, azi1 = 0 } = earth.Inverse(from.latitude, from.longitude, to.latitude, to.longitude)
  const [east, north] = [s12 * Math.sin((azi1 * Math.PI) / 180), s12 * Math.cos((azi1 * Math.PI) / 180)]
  const box = (await page.locator('.map-placer').boundingBox())!
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  await page.mouse.move(x - east / 2, y + north / 2, { steps: 4 })
  await page.mouse.move(x - east, y + north, { steps: 4 })
  await page.mouse.up()
}

describe('a map to trace over', () => {
  it('finds the tee and the way the hole sets out, north up', async () => {
    const near = placeFrom(TEE, 200, 70)
    const typed = page.getByLabel('Latitude and longitude near the tee, degrees')
    await typed.fill('somewhere')
    await page.getByText('Two numbers with decimal points').waitFor()
    await typed.fill(`${near.latitude} ${near.longitude}`)
    await page.getByRole('button', { name: 'Find the tee on the map' }).click()
    await drawn()
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    await bringToCross(near, TEE)
    await page.getByRole('button', { name: 'The tee is here' }).click()
    const ahead = page.getByRole('button', { name: 'The first leg leads here' })
    expect(await ahead.isDisabled()).toBe(true)
    await bringToCross(TEE, PIN)
    await ahead.click()
    const start = readLineStart(await page.getByLabel(/^Row 1, note/).inputValue())
    const { s12 = 0 } = earth.Inverse(TEE.latitude, TEE.longitude, start!.latitude, start!.longitude)
    // A pixel is a metre here.
    expect(s12).toBeLessThan(1.5)
    expect(Math.abs(start!.headingDegrees - HEADING)).toBeLessThan(0.4)
  })

  it('lies under the chart, turned with the hole, so that what is traced is where it is', async () => {
    await page.getByLabel('Row 2, what').selectOption('green')
    await page.getByLabel('Row 2, from').fill('310')
    await page.getByLabel('Row 2, to').fill('340')
    await drawn()
    await page.getByRole('button', { name: 'Trace', exact: true }).click()
    const at = await seenPond()
    await page.mouse.click(at.x, at.y)
    const survey = JSON.parse(String(await page.evaluate(`localStorage.getItem('marram.survey')`))).now
    const [right, along] = survey.draft.corners[0]
    expect(Math.hypot(right - POND.right, along - POND.along)).toBeLessThan(3)
    expect(await page.locator('.map-credit').textContent()).toBe('© the survey of Nowhere')
    expect(await violations(page)).toEqual([])
    await page.setViewportSize({ width: 320, height: 700 })
    expect(await beyondTheSide(page)).toEqual([])
    await page.setViewportSize({ width: 1280, height: 900 })
    await page.getByLabel('under the chart').uncheck()
    expect(await page.locator('.under-tile').count()).toBe(0)
  })

  it('is kept with the course, whose hole then has its true bearing', async () => {
    await page.getByRole('button', { name: 'Let it go' }).click()
    await page.getByLabel('Name of the course').fill('Nowhere Links')
    await page.getByRole('button', { name: 'Keep, and open the desk' }).click()
    await page.locator('.sentence').waitFor()
    const kept = await (await fetch(`${desk.address}api/courses/nowhere-links`)).json()
    const [longitude, latitude] = kept.marram.origin
    expect(longitude).toBeCloseTo(TEE.longitude, 4)
    expect(latitude).toBeCloseTo(TEE.latitude, 4)
    expect(kept['marram:source']).toBe('typed hole table')
  })

  it('is found by keys alone too', async () => {
    await page.goto(`${desk.address}#/survey`)
    await page.getByRole('button', { name: 'Begin a new course' }).click()
    const near = placeFrom(TEE, 180, 40)
    await page
      .getByLabel('Latitude and longitude near the tee, degrees')
      .fill(`${near.latitude}, ${near.longitude}`)
    await page.getByRole('button', { name: 'Find the tee on the map' }).press('Enter')
    // Twice 20 m north to the tee, then 200 m north: a hole that sets out so.
    for (let press = 0; press < 2; press++) await page.keyboard.press('ArrowUp')
    await page.keyboard.press('Space')
    for (let press = 0; press < 10; press++) await page.keyboard.press('ArrowUp')
    await page.keyboard.press('Enter')
    const start = readLineStart(await page.getByLabel(/^Row 1, note/).inputValue())
    const { s12 = 0 } = earth.Inverse(TEE.latitude, TEE.longitude, start!.latitude, start!.longitude)
    expect(s12).toBeLessThan(0.05)
    expect(start!.headingDegrees % 360).toBeCloseTo(0, 1)
  })

  it('that does not come is told of, and asked for again', async () => {
    tiles.pause(true)
    await page.getByLabel('Latitude and longitude near the tee, degrees').fill('-33.5 151.2')
    await page.getByRole('button', { name: 'Find the tee again' }).click()
    const told = page.getByText('does not give some of its tiles')
    await told.waitFor()
    tiles.pause(false)
    await told.waitFor({ state: 'detached' })
    await drawn()
    desk.troubles.length = 0
  })

  it('takes the focus, and gives it back to the button that opened it', async () => {
    const focused = (): Promise<unknown> => page.evaluate('document.activeElement.className')
    expect(await focused()).toContain('map-placer')
    await page.keyboard.press('Escape')
    expect(await page.evaluate('document.activeElement.textContent')).toBe('Find the tee again')
    await page.keyboard.press('Enter')
    await page.locator('.map-placer').waitFor()
    expect(await focused()).toContain('map-placer')
  })

  it('asked for no place but the hole’s own', () => {
    expect(tiles.asked.length).toBeGreaterThan(4)
    expect(tiles.asked.length).toBeLessThan(400)
    expect(desk.troubles).toEqual([])
  })
})
