import type { Conditions } from './conditions.ts'
import {
  FLIGHT_HEADING_STEP,
  REFERENCE_DENSITY,
  SAME_FLIGHT_METRES,
  TABLE_STEP_SECONDS,
} from './flight-settings.ts'
import { heightProfile } from './height-profile.ts'
import { nominalLaunch } from './nominal-launch.ts'
import { runOfLanding } from './run-of-landing.ts'
import { type Landing, type Launch, simulateFlight } from './simulate-flight.ts'

/** What the air and the slope do to a shot along one heading. */
export interface FlightChange {
  /** Multiplies carry. */
  readonly carryShare: number
  /** Sideways metres per metre of stock carry, to the right of the heading positive. */
  readonly driftShare: number
  /** Run by the model, metres, as it is today and at reference conditions: only their difference is used. */
  readonly run: number
  readonly referenceRun: number
  readonly apexMetres: number
  /** How the ball comes down: below level, radians; m/s; revolutions a minute. */
  readonly landingAngle: number
  readonly landingSpeed: number
  readonly landingSpinRpm: number
}

/** Flights of one day on one hole, worked out once for each loft, carry and heading, and kept. */
export interface Flights {
  /**
   * `heading`: radians clockwise from the y axis of the hole frame. `addedLaunch`: radians that the slope under the feet
   * adds to the launch; speed and spin stay.
   */
  changeFor(
    loftDegrees: number,
    carryMetres: number,
    heading: number,
    addedLaunch?: number,
    isLow?: boolean,
  ): FlightChange
  /**
   * Height above the ground at equal parts of the carry, from the ball to the landing, as shares of the carry: a shot
   * that carries further or less flies the same shape larger or smaller.
   */
  heightsFor(
    loftDegrees: number,
    carryMetres: number,
    heading: number,
    addedLaunch?: number,
    isLow?: boolean,
  ): Float64Array
}

/** A club's flight at reference conditions, and what headings have been flown. */
interface Club {
  readonly launch: Launch
  readonly reference: Landing
  readonly referenceRun: number
  readonly byHeading: Map<number, Flight>
}

interface Flight {
  readonly change: FlightChange
  readonly heights: Float64Array
}

/**
 * Flies each club by the model and gives the *changes*: carry, drift, run. Headings are flown every few degrees and
 * joined by straight lines; carries are flown to the nearest few metres, since a share hardly depends on them.
 */
export function flights(conditions: Conditions): Flights {
  const clubs = new Map<string, Club>()
  function clubFor(loftDegrees: number, carryMetres: number, addedLaunch: number, isLow: boolean): Club {
    const carry = Math.max(
      SAME_FLIGHT_METRES,
      SAME_FLIGHT_METRES * Math.round(carryMetres / SAME_FLIGHT_METRES),
    )
    const key = `${loftDegrees} ${carry} ${addedLaunch} ${isLow}`
    const known = clubs.get(key)
    if (known) return known
    const launch = nominalLaunch(loftDegrees, carry, isLow)
    const reference = simulateFlight(
      launch,
      { density: REFERENCE_DENSITY, windRight: 0, windAlong: 0 },
      0,
      TABLE_STEP_SECONDS,
    )
    const angle = Math.min(STEEPEST_LAUNCH, Math.max(LEAST_LAUNCH, launch.angle + addedLaunch))
    const club: Club = {
      launch: { ...launch, angle },
      reference,
      referenceRun: runOfLanding(reference, 0),
      byHeading: new Map(),
    }
    clubs.set(key, club)
    return club
  }
  function flightAt(club: Club, node: number): Flight {
    const known = club.byHeading.get(node)
    if (known) return known
    const made = fly(club, conditions, node * FLIGHT_HEADING_STEP)
    club.byHeading.set(node, made)
    return made
  }
  return {
    changeFor(loftDegrees, carryMetres, heading, addedLaunch = 0, isLow = false) {
      const club = clubFor(loftDegrees, carryMetres, addedLaunch, isLow)
      const at = heading / FLIGHT_HEADING_STEP
      const below = Math.floor(at)
      return between(flightAt(club, below).change, flightAt(club, below + 1).change, at - below)
    },
    heightsFor(loftDegrees, carryMetres, heading, addedLaunch = 0, isLow = false) {
      const club = clubFor(loftDegrees, carryMetres, addedLaunch, isLow)
      const at = heading / FLIGHT_HEADING_STEP
      const below = Math.floor(at)
      const [from, to] = [flightAt(club, below).heights, flightAt(club, below + 1).heights]
      return from.map((height, part) => height + (at - below) * ((to[part] as number) - height))
    },
  }
}

/** One flight. The ground rises steadily, so the height of the landing follows from the carry, and the carry from it. */
function fly(club: Club, conditions: Conditions, heading: number): Flight {
  const sin = Math.sin(heading)
  const cos = Math.cos(heading)
  const air = {
    density: conditions.density,
    windAlong: conditions.windX * sin + conditions.windY * cos,
    windRight: conditions.windX * cos - conditions.windY * sin,
    // Without wind its profile need not be asked at every step.
    ...(conditions.windX === 0 && conditions.windY === 0 ? {} : { windShare: conditions.windShare }),
  }
  const grade = conditions.risePerMetre * Math.cos(heading - conditions.riseHeading)
  const path: number[] = []
  let landing = simulateFlight(club.launch, air, 0, TABLE_STEP_SECONDS, path)
  for (let pass = 0; pass < RISE_PASSES && grade !== 0; pass++) {
    path.length = 0
    landing = simulateFlight(club.launch, air, grade * landing.carry, TABLE_STEP_SECONDS, path)
  }
  return {
    change: {
      carryShare: landing.carry / club.reference.carry,
      driftShare: landing.right / club.reference.carry,
      run: runOfLanding(landing, grade),
      referenceRun: club.referenceRun,
      apexMetres: landing.apex,
      landingAngle: landing.angle,
      landingSpeed: landing.speed,
      landingSpinRpm: landing.spinRpm,
    },
    heights: heightProfile(path, grade),
  }
}

/** Launches that slopes under the feet may lead to, radians. Our assumption. */
const LEAST_LAUNCH = 0.03
const STEEPEST_LAUNCH = 1.2

/** Passes until the landing's height and the carry agree; each gains about a digit. */
const RISE_PASSES = 3

function between(from: FlightChange, to: FlightChange, share: number): FlightChange {
  const mix = (number: keyof FlightChange): number => from[number] + share * (to[number] - from[number])
  return {
    carryShare: mix('carryShare'),
    driftShare: mix('driftShare'),
    run: mix('run'),
    referenceRun: from.referenceRun,
    apexMetres: mix('apexMetres'),
    landingAngle: mix('landingAngle'),
    landingSpeed: mix('landingSpeed'),
    landingSpinRpm: mix('landingSpinRpm'),
  }
}
