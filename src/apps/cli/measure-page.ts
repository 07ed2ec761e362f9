import { greenSurveySentence } from '#golf/course/green-survey.ts'
import type { HazardMeasure, HoleMeasures, TreeMeasure } from '#golf/course/hole-measures.ts'
import { PLAYING_CAUTION } from '#golf/strategy/cautions.ts'
import type { PlayingLength } from '#golf/strategy/playing-length.ts'
import { type Column, tableLines } from './table.ts'
import { lengthNumber, lengthText, type ReaderUnits, sideText } from './units-of-the-reader.ts'

/** A hole as a page of numbers: length and bends, hazards in the order they come, fairway, green. */
export function measurePage(
  measures: HoleMeasures,
  plays: PlayingLength,
  courseName: string,
  units: ReaderUnits,
): string[] {
  const { ref, par, lengthMetres, teeName, strokeIndex } = measures
  return [
    `Hole ${ref}, par ${par}, ${lengthText(lengthMetres, units)}${teeName === '' ? '' : ` from the ${teeName} tees`} · ${courseName}`,
    ...(strokeIndex === null ? [] : [`Stroke index ${strokeIndex}`]),
    ...legLines(measures, units),
    ...playsLines(measures, plays, units),
    ...hazardLines(measures.hazards, units),
    ...treeLines(measures.trees, units),
    ...fairwayLines(measures, units),
    ...greenLines(measures, units),
  ]
}

function legLines({ legs, riseMetres }: HoleMeasures, units: ReaderUnits): string[] {
  const bends = legs.flatMap((leg) =>
    leg.bendDegrees === null || Math.abs(leg.bendDegrees) < 1
      ? []
      : [
          `Bends ${Math.round(Math.abs(leg.bendDegrees))}° to the ${leg.bendDegrees > 0 ? 'right' : 'left'} at ${lengthText(leg.endsAtMetres, units)}.`,
        ],
  )
  const height = lengthText(Math.abs(riseMetres), units)
  if (Math.abs(riseMetres) < 0.5) return bends
  return [...bends, `The green lies ${height} ${riseMetres > 0 ? 'above' : 'below'} the tee.`]
}

/** How long the hole plays and why, where that is another number than its length; and when that must not be used. */
function playsLines({ lengthMetres }: HoleMeasures, plays: PlayingLength, units: ReaderUnits): string[] {
  if (lengthNumber(plays.playsMetres, units) === lengthNumber(lengthMetres, units)) return []
  const parts = [
    ['height', plays.byHeightMetres],
    ['wind', plays.byWindMetres],
    ['air', plays.byAirMetres],
  ] as const
  const why = parts.flatMap(([word, metres]) => {
    const number = lengthNumber(Math.abs(metres), units)
    return number === '0' ? [] : [`${word} ${metres > 0 ? '+' : '−'}${number}`]
  })
  return [
    `Plays ${lengthText(plays.playsMetres, units)}${why.length === 0 ? '' : `: ${why.join(', ')}`}. ${PLAYING_CAUTION}`,
  ]
}

function hazardLines(hazards: readonly HazardMeasure[], units: ReaderUnits): string[] {
  if (hazards.length === 0) return ['', 'No hazard on this hole.']
  const hasHeights = hazards.some(({ heightMetres }) => heightMetres !== null)
  const columns: Column[] = [
    { heading: 'hazard' },
    { heading: 'side' },
    { heading: 'reach', isFigure: true },
    { heading: 'carry', isFigure: true },
    { heading: 'off line', isFigure: true },
    ...(hasHeights ? [{ heading: 'high', isFigure: true }] : []),
  ]
  const rows = hazards.map((hazard) => [
    hazard.name ?? groundWords(hazard.ground),
    hazard.side,
    lengthNumber(hazard.reachMetres, units),
    hazard.carryMetres === null ? '–' : lengthNumber(hazard.carryMetres, units),
    hazard.side === 'across' ? '–' : lengthNumber(Math.abs(hazard.offsetMetres), units),
    ...(hasHeights ? [heightText(hazard.heightMetres, units)] : []),
  ])
  return ['', ...tableLines(columns, rows)]
}

function treeLines(trees: readonly TreeMeasure[], units: ReaderUnits): string[] {
  if (trees.length === 0) return []
  const columns: Column[] = [
    { heading: 'single tree at', isFigure: true },
    { heading: 'off line' },
    { heading: 'high', isFigure: true },
  ]
  const rows = trees.map(({ reachMetres, offsetMetres, heightMetres }) => [
    lengthNumber(reachMetres, units),
    sideText(offsetMetres, units),
    heightText(heightMetres, units),
  ])
  return ['', ...tableLines(columns, rows)]
}

function heightText(metres: number | null, units: ReaderUnits): string {
  return metres === null ? '–' : lengthNumber(metres, units)
}

function groundWords(ground: string): string {
  const words: Record<string, string> = {
    'penalty-red': 'penalty area, red',
    'penalty-yellow': 'penalty area, yellow',
    bunker: 'bunker',
    out: 'out of bounds',
    heavy: 'heavy grass',
  }
  return words[ground] ?? ground.replace('-', ' ')
}

function fairwayLines({ fairway, pinch }: HoleMeasures, units: ReaderUnits): string[] {
  if (fairway.length === 0) return []
  const columns = ['fairway at', 'left edge', 'right edge', 'width'].map((heading) => ({
    heading,
    isFigure: true,
  }))
  const rows = fairway.map((width) => [
    lengthNumber(width.atMetres, units),
    sideText(width.leftMetres, units),
    sideText(width.rightMetres, units),
    lengthNumber(width.widthMetres, units),
  ])
  const narrowest =
    pinch === null
      ? []
      : [`Narrowest at ${lengthText(pinch.atMetres, units)}: ${lengthText(pinch.widthMetres, units)} wide.`]
  return ['', ...tableLines(columns, rows), ...narrowest]
}

function greenLines({ green, greenSurvey }: HoleMeasures, units: ReaderUnits): string[] {
  if (green === null) return ['', 'The survey has no green for this hole.']
  const [front, middle, back] = [green.frontMetres, green.middleMetres, green.backMetres].map((metres) =>
    lengthNumber(metres, units),
  )
  return [
    '',
    `Green: front ${front}, middle ${middle}, back ${back}; ${lengthText(green.depthMetres, units)} deep, ${lengthText(green.widthMetres, units)} wide.`,
    ...(greenSurvey === null ? [] : [greenSurveySentence(greenSurvey)]),
  ]
}
