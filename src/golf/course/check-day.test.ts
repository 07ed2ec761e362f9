import { expect, test } from 'vitest'
import { checkDay } from './check-day.ts'
import { REFERENCE_DAY } from './day.ts'
import { course, holeLine } from './invented-course.fixture.ts'

const links = course({
  holes: [
    holeLine('7', [
      [0, 0],
      [0, 300],
    ]),
  ],
})

test('pins and markers of holes that are not there are told, those of holes that are there are not', () => {
  const pin = { xPaces: 6, yPaces: 14, from: 'left' as const }
  const day = {
    ...REFERENCE_DAY,
    pins: { '7': pin, '77': pin },
    tees: { '7': { movedMetres: 4 }, '07': { movedMetres: 4 } },
  }
  const faults = checkDay(day, links)
  expect(faults.map(({ code, severity, place }) => `${code} ${severity} ${place}`)).toEqual([
    'MAR-DAY-007 warning pins.77',
    'MAR-DAY-007 warning tees.07',
  ])
  expect(faults[0]?.message).toBe('The day has a pin for hole 77, which Invented links does not have.')
  expect(checkDay(REFERENCE_DAY, links)).toEqual([])
})
