import type { ReactElement } from 'react'
import type { Hole } from '#golf/course/hole.ts'
import type { Lie } from '#golf/player/player.ts'
import type { Desk, Reader } from '../desk/desk.ts'
import * as edits from '../desk/edits.ts'
import { BallControls } from '../ledger/ball-controls.tsx'
import { DayControls } from '../ledger/day-controls.tsx'
import type { Edit } from './use-desk.ts'

/** Where the ball lies and what the day is like, each moved as a step of the desk. */
export function SituationPart(props: {
  readonly desk: Desk
  readonly hole: Hole
  /** Of the place where the ball lies; `null` = not planned yet. */
  readonly ground: Lie | null
  readonly reader: Reader
  readonly edit: Edit
  readonly onBallStep: (right: number, further: number) => void
  readonly onPinStep: (right: number, further: number) => void
}): ReactElement {
  const { desk, hole, ground, reader, edit, onBallStep, onPinStep } = props
  return (
    <>
      <BallControls
        ball={desk.ball}
        ground={ground}
        hole={hole}
        reader={reader}
        onLie={(lie) => edit('lie', (now) => edits.setLie(now, lie))}
        onStep={onBallStep}
        onTee={() => edit('tee up', edits.teeUp)}
        onSay={(said) => edit('say of ball', (now) => edits.sayOfBall(now, said))}
        onStrikeFromHere={() => edit('strike from', edits.strikeFromHere)}
      />
      <DayControls
        day={desk.day}
        pin={desk.pin}
        hasGreen={hole.green !== null}
        hasDayPin={desk.day.pins[hole.ref] !== undefined}
        bearingDegrees={hole.bearingDegrees}
        reader={reader}
        onWindSpeed={(speed) => edit('wind', (now) => edits.setWindSpeed(now, speed))}
        onWindFrom={(degrees) => edit('wind-from', (now) => edits.setWindFrom(now, degrees))}
        onFirmness={(firmness) => edit('firmness', (now) => edits.setFirmness(now, firmness))}
        onGreenSpeed={(feet) => edit('green-speed', (now) => edits.setGreenSpeed(now, feet))}
        markersMetres={desk.day.tees[hole.ref]?.movedMetres ?? 0}
        onMarkers={(metres) => edit('markers', (now) => edits.moveMarkers(now, metres))}
        spread={desk.spread}
        onSpread={(spread) => edit('spread', (now) => edits.setSpread(now, spread))}
        onPin={(pin) => edit('pin-part', (now) => edits.movePin(now, pin))}
        onPinStep={onPinStep}
      />
    </>
  )
}
