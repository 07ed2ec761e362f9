import type { FlightChange, Flights } from '#golf/ball/flights.ts'
import { type FlightsIn, keptFlights } from '#golf/ball/kept-flights.ts'
import type { GroundToday } from '#golf/ball/turf.ts'
import type { Day } from '#golf/course/day.ts'
import { greenSurface } from '#golf/course/green-surface.ts'
import type { Hole } from '#golf/course/hole.ts'
import type { Player } from '#golf/player/player.ts'
import { type Canopy, canopyOf } from './canopy.ts'
import { holeConditions } from './hole-conditions.ts'
import { type NearGreenCorrections, nearGreenCorrections } from './near-green-corrections.ts'
import { type OutcomeCosts, outcomeCosts } from './outcome-costs.ts'
import { type Places, placesOf } from './places.ts'
import { type RestTables, restTables } from './rest-tables.ts'
import { isLow, type Shot } from './shots.ts'
import { type SlantTables, slantTables } from './slant-tables.ts'
import { type States, statesOf } from './states.ts'

/** The ground of a hole laid out for play: what depends neither on the player nor on the day. */
export interface HoleGround {
  readonly hole: Hole
  readonly places: Places
  readonly states: States
  /** How a player's balls fly over it on a day. */
  flightsFor(player: Player, day: Day): Flights
  /** Where balls come to rest in rough as long as the day says. */
  restFor(rough: Day['rough']): RestTables
  /** What catches balls near the ground, for rough as long as the day says. */
  slantsFor(rough: Day['rough']): SlantTables
  /** Bytes of the tables of both that have been made so far. */
  tableBytes(): number
  readonly costs: OutcomeCosts
  readonly canopy: Canopy
  /** Called many times a second while a plan is worked out; what it throws ends the plan. */
  lookUp(): void
}

/** One hole, one player, one day: everything a shot's outcome depends on. */
export interface HoleModel extends HoleGround {
  readonly player: Player
  readonly flights: Flights
  readonly today: GroundToday
  readonly rest: RestTables
  readonly slants: SlantTables
  /** What the green's slopes add near it; `null` when they add nothing. */
  readonly nearGreen: NearGreenCorrections | null
}

/** Lays out the ground of a hole, or gives what was kept of it. */
export type LayGround = (hole: Hole, cellMetres?: number) => HoleGround

/** Lays out the ground of a hole once, for any number of players and days. `flightsIn`: flights kept from other grounds. */
export function holeGround(
  hole: Hole,
  cellMetres?: number,
  flightsIn: FlightsIn = keptFlights(),
): HoleGround {
  const places = placesOf(hole, cellMetres)
  const canopy = canopyOf(hole, places)
  const surface = greenSurface(hole)
  const states = statesOf(hole, places, canopy)
  const rest = new Map<Day['rough'], RestTables>()
  const slants = new Map<Day['rough'], SlantTables>()
  const restFor = (rough: Day['rough']): RestTables => {
    const known = rest.get(rough) ?? restTables(places, surface, rough)
    rest.set(rough, known)
    return known
  }
  return {
    hole,
    places,
    states,
    flightsFor: ({ name }, day) => flightsIn(holeConditions(hole, day), name),
    restFor,
    slantsFor: (rough) => {
      const known = slants.get(rough) ?? slantTables(hole, places, states, restFor(rough))
      slants.set(rough, known)
      return known
    },
    tableBytes: () => [...rest.values(), ...slants.values()].reduce((sum, tables) => sum + tables.bytes(), 0),
    costs: outcomeCosts(places, hole.pin, hole.localRules),
    canopy,
    lookUp: () => undefined,
  }
}

/**
 * Puts a player and a day on a hole. `flown`: flights of the same day on the same hole, to save flying them again;
 * `nearGreen`: corrections of a like player on the same green, to save rolling its putts again.
 */
export function holeModel(
  ground: HoleGround,
  player: Player,
  day: Day,
  flown?: Flights,
  nearGreen?: NearGreenCorrections | null,
): HoleModel {
  return {
    ...ground,
    player,
    flights: flown ?? ground.flightsFor(player, day),
    today: { firmness: day.firmness, greenSpeedFeet: day.greenSpeedFeet, rough: day.rough },
    rest: ground.restFor(day.rough),
    slants: ground.slantsFor(day.rough),
    nearGreen:
      nearGreen === undefined
        ? nearGreenCorrections(ground.hole, ground.places, player, day, ground.lookUp)
        : nearGreen,
  }
}

/** What the day does to a shot along a heading. */
export function changeOfShot(model: Pick<HoleModel, 'flights'>, shot: Shot, heading: number): FlightChange {
  return model.flights.changeFor(shot.loftDegrees, shot.stock.carryMetres, heading, 0, isLow(shot))
}

/** Where the middle of a shot's finishes lies as seen from the ball today, drift included: radians, and metres by the stock total. */
export function centreToday(
  model: Pick<HoleModel, 'flights'>,
  shot: Shot,
  heading: number,
): { readonly heading: number; readonly total: number } {
  const { carryShare, driftShare } = changeOfShot(model, shot, heading)
  return {
    heading: heading + Math.atan2(driftShare, carryShare),
    total: shot.stock.totalMetres * Math.hypot(carryShare, driftShare),
  }
}
