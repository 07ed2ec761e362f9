import { readFileSync } from 'node:fs'
import Papa from 'papaparse'
import { describe, expect, it } from 'vitest'
import { feetToMetres, metresToFeet } from '#numbers/units/units.ts'
import { GRAVITY } from './flight-settings.ts'
import {
  HOLE_RADIUS_METRES,
  LONGEST_ROLL_METRES,
  LONGEST_ROLL_SECONDS,
  RAMP_SPEED_METRES_PER_SECOND,
} from './green-settings.ts'
import { greenSlowing } from './green-slowing.ts'
import { rollPast, type Slopes, simulateRoll } from './simulate-roll.ts'

const plane = (right: number, up: number): Slopes => ({ gradientAt: () => [right, up] })
const LEVEL = plane(0, 0)
const ramp = { x: 0, y: 0, headingRadians: 0, speed: RAMP_SPEED_METRES_PER_SECOND }
/** A hollow and a hump, as a green's second tier might be. */
const BUMPY: Slopes = {
  gradientAt: (x, y) => [0.03 * Math.sin(x / 3) + 0.01, 0.025 * Math.cos(y / 4 + x / 6) - 0.005],
}
const pullOf = (rise: number): number => ((5 / 7) * GRAVITY * rise) / Math.hypot(1, rise)

const rows = Papa.parse<Record<string, string>>(
  readFileSync('test/fixtures/reference/stimp_derived.csv', 'utf8'),
  { header: true, skipEmptyLines: true },
).data

describe('a ball on a straight way of constant slope', () => {
  // Derived by others from v²/2(a ± 5/7 g·slope), reference section 5.1; printed to 0.01 ft.
  it.each(rows.map((row) => [`${row.level_stimp_ft} ft, ${row.slope_pct} %`, row] as const))(
    'rolls as far as derived elsewhere from the ramp test: %s',
    (_, row) => {
      // Their release is 1.829 m/s where ours is 1.83, and they put the slope for its sine: the same here, so that only
      // the rolling is compared, to the last digit printed.
      const speed = 1.829
      const slowing = speed ** 2 / (2 * feetToMetres(Number(row.level_stimp_ft)))
      const sine = Number(row.slope_pct) / 100
      const rise = sine / Math.sqrt(1 - sine ** 2)
      const rolled = (sign: number): number =>
        simulateRoll({ ...ramp, speed }, plane(0, sign * rise), slowing).y
      expect(slowing).toBeCloseTo(Number(row.deceleration_m_per_s2), 3)
      expect(Math.abs(metresToFeet(rolled(1)) - Number(row.roll_up_ft))).toBeLessThan(0.0051)
      expect(Math.abs(metresToFeet(rolled(-1)) - Number(row.roll_down_ft))).toBeLessThan(0.0051)
      // Brede's correction of the ramp test gives back the level reading under constant slowing (Course Rating Manual).
      const [up, down] = [rolled(1), rolled(-1)]
      expect((2 * up * down) / (up + down)).toBeCloseTo(feetToMetres(Number(row.level_stimp_ft)), 9)
    },
  )

  it('is exact: distance, time and path to 1e-9 whatever the slope and heading', () => {
    for (const headingRadians of [0, 0.7, 2.5, -2])
      for (const rise of [-0.05, -0.02, 0, 0.03, 0.2]) {
        const slowing = greenSlowing(9)
        const slopes = plane(rise * Math.sin(headingRadians), rise * Math.cos(headingRadians))
        const speed = 3.1
        const roll = simulateRoll({ x: 4, y: -7, headingRadians, speed }, slopes, slowing)
        const gain = slowing + pullOf(rise)
        if (rise === 0.2) continue
        const far = speed ** 2 / (2 * gain)
        expect(roll.x).toBeCloseTo(4 + far * Math.sin(headingRadians), 9)
        expect(roll.y).toBeCloseTo(-7 + far * Math.cos(headingRadians), 9)
        expect(roll.metres).toBeCloseTo(far, 9)
        expect(roll.seconds).toBeCloseTo(speed / gain, 9)
        expect(roll.isStopped).toBe(true)
      }
  })

  // Common practice as orders; 0.80 and 1.34 derived in the reference for 10 ft and 2 %.
  it('goes 0.80 as far up 2 % as on the level, 1.34 as far down it', () => {
    const level = simulateRoll(ramp, LEVEL, greenSlowing(10)).metres
    expect(simulateRoll(ramp, plane(0, 0.02), greenSlowing(10)).metres / level).toBeCloseTo(0.8, 2)
    expect(simulateRoll(ramp, plane(0, -0.02), greenSlowing(10)).metres / level).toBeCloseTo(1.34, 2)
  })

  it('comes back down from where no ball can stop, and is given up still rolling', () => {
    const slowing = greenSlowing(12)
    const roll = simulateRoll(ramp, plane(0, 0.1), slowing)
    expect(roll.isStopped).toBe(false)
    expect(roll.y).toBeLessThan(-100)
    expect(roll.metres).toBeGreaterThanOrEqual(LONGEST_ROLL_METRES)
    // 7.8, 6.5 and 5.6 % at 10, 12 and 14 ft: derived in the reference, a/g over 5/7.
    for (const [feet, percent] of [
      [10, 7.8],
      [12, 6.5],
      [14, 5.6],
    ] as const) {
      const stops = (rise: number): boolean =>
        simulateRoll({ ...ramp, speed: 0.2 }, plane(0, -rise), greenSlowing(feet)).isStopped
      expect(stops((percent - 0.1) / 100)).toBe(true)
      expect(stops((percent + 0.1) / 100)).toBe(false)
    }
  })

  it('stays where it is on a slope that holds it, and starts down one that does not', () => {
    const still = { x: 1, y: 2, headingRadians: 1, speed: 0 }
    const held = simulateRoll(still, plane(0.05, 0), greenSlowing(10))
    expect(held).toMatchObject({ x: 1, y: 2, metres: 0, seconds: 0, isStopped: true })
    const slowing = greenSlowing(10)
    const freed = simulateRoll(still, plane(0.1, 0), slowing)
    expect(freed.isStopped).toBe(false)
    expect(freed.y).toBeCloseTo(2, 9)
    expect(1 - freed.x).toBeCloseTo(((pullOf(0.1) - slowing) * freed.seconds ** 2) / 2, 6)
    expect(freed.seconds).toBeLessThan(LONGEST_ROLL_SECONDS)
  })
})

describe('a ball across a slope', () => {
  /**
   * Where it stops on a plane that falls towards +x, in closed form. With t = tan(φ/2), φ the angle of travel from the
   * fall, and k = slowing/pull, the speed is C·t^(k−1)·(1 + t²)/2 and both coordinates are sums of two powers of t.
   */
  const restOnPlane = (phi: number, speed: number, slowing: number, pull: number): [number, number] => {
    const k = slowing / pull
    const t = Math.tan(phi / 2)
    const c = (2 * speed * t ** (1 - k)) / (1 + t * t)
    return [
      (c ** 2 / (4 * pull)) * (t ** (2 * k - 2) / (2 * k - 2) - t ** (2 * k + 2) / (2 * k + 2)),
      (c ** 2 / (2 * pull)) * (t ** (2 * k - 1) / (2 * k - 1) + t ** (2 * k + 1) / (2 * k + 1)),
    ]
  }

  it('stops within a millimetre of the closed form', () => {
    for (const feet of [7, 10, 13])
      for (const rise of [0.01, 0.02, 0.035])
        for (const phi of [0.3, 1, Math.PI / 2, 2.4]) {
          const slowing = greenSlowing(feet)
          const speed = 2.6
          const [fallen, across] = restOnPlane(phi, speed, slowing, pullOf(rise))
          const start = { x: 0, y: 0, headingRadians: Math.PI / 2 - phi, speed }
          const roll = simulateRoll(start, plane(-rise, 0), slowing)
          expect(Math.hypot(roll.x - fallen, roll.y - across), `${feet} ${rise} ${phi}`).toBeLessThan(1e-3)
        }
  })

  it('does not depend on the step: half of it moves the ball under a millimetre, on bumps too', () => {
    for (const slopes of [plane(0.03, 0.01), BUMPY])
      for (const headingRadians of [0, 1, 2, 3, 4, 5]) {
        const start = { x: 0, y: 0, headingRadians, speed: 2.4 }
        const usual = simulateRoll(start, slopes, greenSlowing(10))
        const finer = simulateRoll(start, slopes, greenSlowing(10), undefined, {
          seconds: 0.025,
          share: 0.05,
        })
        expect(Math.hypot(usual.x - finer.x, usual.y - finer.y)).toBeLessThan(1e-3)
      }
  })

  it('loses to the grass what the hill and its speed give: slowing × path = v²/2 + 5/7 g × drop', () => {
    // The pull is g·sin θ along the slope for each level metre, which on a small rise is the drop to a part in 1000.
    const rise = 0.03
    const start = { x: 0, y: 0, headingRadians: 0.2, speed: 2.5 }
    const slowing = greenSlowing(10)
    const roll = simulateRoll(start, plane(-rise, 0), slowing)
    expect(slowing * roll.metres).toBeCloseTo(2.5 ** 2 / 2 + pullOf(rise) * roll.x, 4)
  })

  it('is mirrored when the ground is', () => {
    const mirrored: Slopes = {
      gradientAt: (x, y) => {
        const [right, up] = BUMPY.gradientAt(-x, y)
        return [-right, up]
      },
    }
    for (const headingRadians of [-2, 0.4, 1.8]) {
      const roll = simulateRoll({ x: 2, y: 0, headingRadians, speed: 2 }, BUMPY, 0.6)
      const other = simulateRoll({ x: -2, y: 0, headingRadians: -headingRadians, speed: 2 }, mirrored, 0.6)
      expect(other.x).toBeCloseTo(-roll.x, 9)
      expect(other.y).toBeCloseTo(roll.y, 9)
    }
  })
})

describe('a ball at the hole', () => {
  const slowing = greenSlowing(10)
  const towards = (past: number, offset: number): ReturnType<typeof simulateRoll> =>
    simulateRoll(
      { x: offset, y: 0, headingRadians: 0, speed: Math.sqrt(2 * slowing * (5 + past)) },
      LEVEL,
      slowing,
      [0, 5],
    )
  const pastAt = (speed: number): number => speed ** 2 / (2 * slowing)

  // Holmes 1991: 1.63 m/s at most dead centre; Penner 2002 (from memory): less off centre by 1 − (δ/R)².
  it('falls at up to 1.63 m/s dead centre and at less off it', () => {
    expect(towards(pastAt(1.629), 0).isHoled).toBe(true)
    expect(towards(pastAt(1.631), 0).isHoled).toBe(false)
    const half = HOLE_RADIUS_METRES / 2
    expect(towards(pastAt(1.63 * 0.749), half).isHoled).toBe(true)
    expect(towards(pastAt(1.63 * 0.751), half).isHoled).toBe(false)
    expect(towards(0.1, HOLE_RADIUS_METRES * 1.01).isHoled).toBe(false)
  })

  it('falls when it only just reaches the hole, and not when it stops short', () => {
    expect(towards(0.001, 0).isHoled).toBe(true)
    expect(towards(-0.03, 0).isHoled).toBe(true)
    expect(towards(-0.06, 0).isHoled).toBe(false)
  })

  it('rolls on where the hole is only marked', () => {
    const start = { x: 0, y: 0, headingRadians: 0, speed: Math.sqrt(2 * slowing * 5.4) }
    expect(simulateRoll(start, LEVEL, slowing, [0, 5])).toMatchObject({ x: 0, y: 5, isHoled: true })
    const past = rollPast(start, LEVEL, slowing, [0, 5])
    expect(past.isHoled).toBe(false)
    expect(past.y).toBeCloseTo(5.4, 9)
    expect(past.pass?.offsetMetres).toBeCloseTo(0, 9)
  })

  it('says how it went by, on which side and how fast', () => {
    const { pass, isHoled, y } = towards(0.5, 0.3)
    expect(isHoled).toBe(false)
    expect(y).toBeCloseTo(5.5, 9)
    expect(pass?.offsetMetres).toBeCloseTo(0.3, 9)
    expect(pass?.speed).toBeCloseTo(Math.sqrt(2 * slowing * 0.5), 9)
    expect(towards(-0.5, 0).pass).toBeNull()
  })
})
